package org.tapeline.journal.verify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.journal.JournalFixture.SOON;

import java.sql.Connection;
import java.sql.SQLException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.JournalFixture;

@Tag("servers")
@Tag("containers")
@DisplayName("Verifying a journal")
class VerifyJournalTest {
  private JournalFixture on;

  @BeforeEach
  void open() {
    on = new JournalFixture();
    for (int i = 0; i < 4; i++) {
      on.append("s", i, i);
      on.append("t", i, i);
    }
    on.relay().start();
    await().atMost(SOON).until(() -> on.number("select count(*) from journal_unsent") == 0);
  }

  @AfterEach
  void close() {
    on.close();
  }

  @Test
  @DisplayName("finds nothing wrong with one that was left alone")
  void sound() throws SQLException {
    assertThat(chains().faults()).isEmpty();
    assertThat(chains().events()).isEqualTo(8);
    assertThat(chains().streams()).isEqualTo(2);
    assertThat(topic().faults()).isEmpty();
    assertThat(topic().matching()).isEqualTo(8);
  }

  @Test
  @DisplayName("shows an event whose content was altered")
  void altered() throws SQLException {
    tamper(
        "update journal set data = '{\"thing\":\"s\",\"number\":9}' where stream = 'count-s' and"
            + " version = 2");
    assertThat(chains().faults()).containsExactly("count-s: version 2 is not what was written");
  }

  @Test
  @DisplayName("shows an event that was taken out of the middle")
  void removed() throws SQLException {
    tamper("delete from journal where stream = 'count-s' and version = 2");
    assertThat(chains().faults())
        .containsExactly(
            "count-s: version 2 is missing", "count-s: version 3 is not what was written");
  }

  @Test
  @DisplayName("shows that the end of a stream was cut off, from what had been sent")
  void cutOff() throws SQLException {
    tamper("delete from journal where stream = 'count-s' and version = 4");
    assertThat(chains().faults()).isEmpty();
    assertThat(topic().faults()).hasSize(1).first().asString().contains("count-s version 4");
  }

  private void tamper(String sql) {
    on.execute("alter table journal disable trigger all");
    on.execute(sql);
    on.execute("alter table journal enable trigger all");
  }

  private ChainCheck.Report chains() throws SQLException {
    try (Connection connection = on.dataSource.getConnection()) {
      return ChainCheck.run(connection);
    }
  }

  private TopicCheck.Report topic() throws SQLException {
    try (Connection connection = on.dataSource.getConnection()) {
      return TopicCheck.run(connection, on.kafka, on.topic);
    }
  }
}
