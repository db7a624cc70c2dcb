package org.tapeline.journal.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tapeline.journal.JournalFixture;

@Tag("servers")
@Tag("containers")
@DisplayName("Looking for people's names")
class ScansTest {
  private static final Set<String> NOBODY = Set.of();

  private final PersonalWords words = new PersonalWords();
  private final Findings findings = new Findings();
  private JournalFixture on;

  @BeforeEach
  void open() {
    words.addText("Wren Marrowby");
    on = new JournalFixture();
    on.append("somebody", 0, 1);
    on.relay().start();
    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
  }

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName("finds none in a journal and a topic that tell of ids")
  void none() throws SQLException {
    assertThat(tables(NOBODY)).isPositive();
    assertThat(topic()).isEqualTo(1);
    assertThat(findings.places()).isEmpty();
  }

  @Test
  @DisplayName("finds one in any row of any table but those that may tell")
  void table() throws SQLException {
    on.execute("create table note (id int, said json)");
    on.execute("insert into note values (1, '{\"by\":\"Marrowby\"}')");
    tables(Set.of("test.note"));
    assertThat(findings.places()).isEmpty();
    tables(NOBODY);
    assertThat(findings.places()).containsExactly("table test.note row (0,1): name Ma...");
  }

  @Test
  @DisplayName("finds one in the journal and in the record that was sent of it")
  void event() throws SQLException {
    on.append("Wren", 0, 1);
    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
    tables(NOBODY);
    assertThat(findings.places()).anyMatch(place -> place.startsWith("table test.journal row"));
    long inTables = findings.count();
    topic();
    assertThat(findings.count()).isGreaterThan(inTables);
  }

  @Test
  @DisplayName("finds one in a line of a log")
  void log(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("notify.log"), "started\nsent to Wren Marrowby\n");
    assertThat(LogScan.run(folder, words, findings)).isEqualTo(2);
    assertThat(findings.places())
        .containsExactly("log notify.log line 2: name Wr...", "log notify.log line 2: name Ma...");
  }

  private long tables(Set<String> mayTell) throws SQLException {
    try (Connection connection = on.dataSource.getConnection()) {
      return new TableScan(connection, "test").run(mayTell, words, findings);
    }
  }

  private long topic() {
    return new TopicScan(on.kafka).run(on.topic, words, findings);
  }
}
