package org.tapeline.journal.inbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.jboss.logging.MDC;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.quarkus.log.CorrelatedLog;

@Tag("servers")
@Tag("containers")
@DisplayName("The line in the log that tells of a parked event")
class ParkedLinesTest {
  private final JournalFixture on = new JournalFixture();
  private final Logger logger = Logger.getLogger(Inbox.class.getName());
  private final List<Object> chains = new ArrayList<>();
  private final Handler listener = new Listener();
  private final UUID chain = UUID.randomUUID();

  private final class Listener extends Handler {
    @Override
    public void publish(LogRecord line) {
      if (line.getMessage().startsWith("Parked")) {
        chains.add(MDC.get(CorrelatedLog.KEY));
      }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  @BeforeEach
  void listen() {
    logger.addHandler(listener);
  }

  @AfterEach
  void close() {
    logger.removeHandler(listener);
    on.close();
  }

  @Test
  @DisplayName("carries the chain's id when nobody knows the event")
  void unknown() {
    parks(Subscription.named("test").events(on.topic));
  }

  @Test
  @DisplayName("carries the chain's id when what it leads to fails")
  void failed() {
    parks(
        Subscription.named("test")
            .events(on.topic)
            .on(
                JournalFixture.COUNTED,
                Counted.class,
                (counted, event) -> {
                  throw new IllegalStateException("cannot be counted");
                }));
  }

  private void parks(Subscription subscription) {
    new Inbox(on.transactions, subscription, Clock.systemUTC(), new CorrelatedLog())
        .apply(List.of(event()));
    assertThat(on.number("select count(*) from inbox_parked")).isEqualTo(1);
    assertThat(chains).containsExactly(chain.toString());
    assertThat(MDC.get(CorrelatedLog.KEY)).isNull();
  }

  private Envelope event() {
    Map<String, String> headers =
        Map.of(
            "ce_id",
            UUID.randomUUID().toString(),
            "ce_type",
            JournalFixture.COUNTED,
            "ce_time",
            "2026-01-01T00:00:00Z",
            "ce_subject",
            "count-s",
            "ce_streamversion",
            "1",
            "ce_correlationid",
            chain.toString(),
            "ce_causationid",
            chain.toString());
    return new Envelope(on.topic, 0, 0, "s", headers, "{\"thing\":\"s\",\"number\":1}");
  }
}
