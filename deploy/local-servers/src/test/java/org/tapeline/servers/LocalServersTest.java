package org.tapeline.servers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.NewTopic;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LocalServersTest {

  @Test
  @DisplayName("PostgreSQL keeps what was committed, with the durability of an ordinary server")
  void postgresKeepsItsData(@TempDir Path directory) throws Exception {
    int port = Ports.free();
    try (LocalPostgres postgres = LocalPostgres.keeping(directory.resolve("pg"), port)) {
      postgres.createDatabase("kept");
      postgres.createDatabase("kept");
      for (String setting : List.of("fsync", "synchronous_commit", "full_page_writes")) {
        assertThat(text(postgres, "show " + setting)).isEqualTo("on");
      }
      text(postgres, "create table t (n int); insert into t values (7); select 'done'");
    }
    try (LocalPostgres again = LocalPostgres.keeping(directory.resolve("pg"), port)) {
      assertThat(text(again, "select n::text from t")).isEqualTo("7");
    }
  }

  @Test
  @DisplayName("Kafka keeps its topics over a restart")
  void kafkaKeepsItsTopics(@TempDir Path directory) throws Exception {
    int port = Ports.free();
    int controller = Ports.free();
    try (LocalKafka kafka = LocalKafka.keeping(directory, port, controller);
        Admin admin = admin(kafka)) {
      admin.createTopics(List.of(new NewTopic("kept", 1, (short) 1))).all().get();
    }
    try (LocalKafka again = LocalKafka.keeping(directory, port, controller);
        Admin admin = admin(again)) {
      assertThat(admin.listTopics().names().get()).contains("kept");
    }
  }

  private static Admin admin(LocalKafka kafka) {
    return Admin.create(Map.of("bootstrap.servers", kafka.bootstrapServers()));
  }

  private static String text(LocalPostgres postgres, String sql) throws Exception {
    try (Connection connection =
            DriverManager.getConnection(
                postgres.jdbcUrl("kept"), LocalPostgres.USER, LocalPostgres.PASSWORD);
        Statement statement = connection.createStatement()) {
      boolean rows = statement.execute(sql);
      while (!rows) {
        rows = statement.getMoreResults();
      }
      try (ResultSet row = statement.getResultSet()) {
        row.next();
        return row.getString(1);
      }
    }
  }
}
