package org.tapeline.journal.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.COUNTED;
import static org.tapeline.journal.JournalFixture.SOON;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;

@Tag("servers")
@Tag("containers")
@DisplayName("State on a compacted topic")
class PostgresCurrentStateTest {
  private JournalFixture on;
  private PostgresCurrentState state;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    state = new PostgresCurrentState(on.transactions, Clock.systemUTC(), () -> {});
  }

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName("is sent when it changes and not when it stays the same")
  void sentOnChange() {
    on.relay().start();
    state.put(on.topic, COUNTED, "k", new Counted("k", 1));
    allSent();
    state.put(on.topic, COUNTED, "k", new Counted("k", 1));
    state.put(on.topic, COUNTED, "k", new Counted("k", 2));
    allSent();
    assertThat(values())
        .containsExactly("{\"thing\":\"k\",\"number\":1}", "{\"thing\":\"k\",\"number\":2}");
  }

  @Test
  @DisplayName("is erased by a tombstone, after which nothing of it is left here")
  void erased() {
    on.relay().start();
    state.put(on.topic, COUNTED, "k", new Counted("k", 1));
    allSent();
    state.erase(on.topic, COUNTED, "k");
    await().atMost(SOON).until(() -> on.number("select count(*) from current_state") == 0);
    assertThat(on.onTopic()).hasSize(2);
    assertThat(on.onTopic().getLast().value()).isNull();
  }

  private void allSent() {
    await()
        .atMost(SOON)
        .until(() -> on.number("select count(*) from current_state where unsent") == 0);
  }

  private List<String> values() {
    return on.onTopic().stream()
        .map(record -> new String(record.value(), StandardCharsets.UTF_8))
        .toList();
  }
}
