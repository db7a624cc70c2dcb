package org.tapeline.journal.quarkus.metrics;

import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.quarkus.Serving;

@Tag("servers")
@Tag("containers")
@DisplayName("A figure")
class FigureClockTest {
  private static final Figure HATS =
      new Figure("hats", "Hats by state", "select state, count(*) from hat group by state");

  private final JournalFixture on = new JournalFixture();
  private final MeterRegistry registry = new SimpleMeterRegistry();
  private final FigureClock clock =
      new FigureClock(
          List.of(() -> List.of(HATS)), registry, on.transactions, Duration.ofMillis(50));

  @AfterEach
  void close() {
    clock.stop(null);
    on.close();
  }

  @Test
  @DisplayName("follows its table, and is gone rather than old while it cannot be counted")
  void follows() {
    on.execute("create table hat (state text)");
    on.execute("insert into hat values ('worn'), ('worn'), ('lost')");
    clock.start(null, new Serving(Optional.empty()));
    shows("worn", 2);
    shows("lost", 1);
    on.execute("insert into hat values ('worn')");
    shows("worn", 3);

    on.execute("alter table hat rename to cap");
    await().atMost(SOON).until(() -> hats("worn") == null && hats("lost") == null);
    on.execute("alter table cap rename to hat");
    shows("worn", 3);
  }

  private void shows(String state, int number) {
    await().atMost(SOON).until(() -> hats(state) != null && hats(state).value() == number);
  }

  private Gauge hats(String state) {
    return registry.find("hats").tag("state", state).gauge();
  }
}
