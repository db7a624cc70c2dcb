package org.tapeline.servers;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;

/**
 * A real PostgreSQL server, started from binaries that come as a library. Its durability is that of
 * an ordinary installation: the library that starts it would turn that off.
 */
public final class LocalPostgres implements AutoCloseable {
  public static final String USER = "tapeline";
  public static final String PASSWORD = "tapeline";

  private final EmbeddedPostgres server;

  private LocalPostgres(EmbeddedPostgres server) {
    this.server = server;
  }

  /** A server on a free port whose data goes when it is closed. */
  public static LocalPostgres temporary() throws IOException {
    return start(EmbeddedPostgres.builder());
  }

  /**
   * A server that keeps its data.
   *
   * @param port 0 for a free one
   * @throws IOException when the port is taken or the data cannot be used
   */
  public static LocalPostgres keeping(Path dataDirectory, int port) throws IOException {
    return start(
        EmbeddedPostgres.builder()
            .setPort(port)
            .setDataDirectory(dataDirectory)
            .setCleanDataDirectory(false));
  }

  private static LocalPostgres start(EmbeddedPostgres.Builder builder) throws IOException {
    EmbeddedPostgres server =
        builder
            .setServerConfig("fsync", "on")
            .setServerConfig("synchronous_commit", "on")
            .setServerConfig("full_page_writes", "on")
            .setServerConfig("max_connections", "200")
            .setServerConfig("shared_buffers", "64MB")
            .setPGStartupWait(Duration.ofSeconds(60))
            .start();
    LocalPostgres postgres = new LocalPostgres(server);
    try {
      postgres.createUser();
    } catch (SQLException e) {
      postgres.close();
      throw new IOException("PostgreSQL started but refused a user: " + e.getMessage(), e);
    }
    return postgres;
  }

  private void createUser() throws SQLException {
    if (!exists("select 1 from pg_roles where rolname = '" + USER + "'")) {
      execute("create role " + USER + " superuser login password '" + PASSWORD + "'");
    }
  }

  /** Makes the database unless it is there. */
  public void createDatabase(String name) throws SQLException {
    if (!name.matches("[a-z][a-z0-9_]*")) {
      throw new IllegalArgumentException("Not a name for a database: " + name);
    }
    if (!exists("select 1 from pg_database where datname = '" + name + "'")) {
      execute("create database " + name + " owner " + USER);
    }
  }

  public int port() {
    return server.getPort();
  }

  public String jdbcUrl(String database) {
    return "jdbc:postgresql://127.0.0.1:" + port() + "/" + database;
  }

  private boolean exists(String sql) throws SQLException {
    try (Connection connection = server.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      return row.next();
    }
  }

  private void execute(String sql) throws SQLException {
    try (Connection connection = server.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  @Override
  public void close() throws IOException {
    server.close();
  }
}
