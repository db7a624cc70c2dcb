package org.tapeline.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.tapeline.servers.LocalPostgres;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/** A PostgreSQL server that makes databases. */
public interface PostgresServer extends AutoCloseable {
  TestServers.Database database(String name);

  @Override
  void close();

  static PostgresServer start() {
    return ServerChoice.containers() ? new InContainer() : new Embedded();
  }

  /** The embedded server. */
  final class Embedded implements PostgresServer {
    private final LocalPostgres server;

    Embedded() {
      try {
        server = LocalPostgres.temporary();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public TestServers.Database database(String name) {
      try {
        server.createDatabase(name);
      } catch (SQLException e) {
        throw new IllegalStateException(e);
      }
      return new TestServers.Database(
          server.jdbcUrl(name), LocalPostgres.USER, LocalPostgres.PASSWORD);
    }

    @Override
    public void close() {
      try {
        server.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** A server in a container. */
  final class InContainer implements PostgresServer {
    private final PostgreSQLContainer container =
        new PostgreSQLContainer(
            DockerImageName.parse(
                    ServerChoice.setting("TAPELINE_TEST_POSTGRES_IMAGE", "postgres:17"))
                .asCompatibleSubstituteFor("postgres"));

    InContainer() {
      container.start();
    }

    @Override
    public TestServers.Database database(String name) {
      try (Connection connection =
              DriverManager.getConnection(
                  container.getJdbcUrl(), container.getUsername(), container.getPassword());
          Statement statement = connection.createStatement()) {
        statement.execute("create database " + name);
      } catch (SQLException e) {
        throw new IllegalStateException(e);
      }
      String url =
          "jdbc:postgresql://"
              + container.getHost()
              + ":"
              + container.getMappedPort(PostgreSQLContainer.POSTGRESQL_PORT)
              + "/"
              + name;
      return new TestServers.Database(url, container.getUsername(), container.getPassword());
    }

    @Override
    public void close() {
      container.stop();
    }
  }
}
