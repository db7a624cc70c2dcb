package org.tapeline.journal.quarkus.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.MDC;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Cause;

class CorrelatedLogTest {
  private final CorrelatedLog log = new CorrelatedLog();

  @Test
  @DisplayName("What is logged on the way of a chain carries its id, and what comes after does not")
  void carries() {
    UUID outer = UUID.randomUUID();
    UUID inner = UUID.randomUUID();
    List<Object> said = new ArrayList<>();
    log.step(
        "send",
        Cause.command(outer),
        () -> {
          said.add(MDC.get("correlationId"));
          log.step("send", Cause.command(inner), () -> said.add(MDC.get("correlationId")));
          return said.add(MDC.get("correlationId"));
        });
    assertThat(said).containsExactly(outer.toString(), inner.toString(), outer.toString());
    assertThat(MDC.get("correlationId")).isNull();
  }
}
