package org.tapeline.proof.faults.process;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import org.apache.kafka.clients.admin.Admin;
import org.tapeline.servers.LocalPostgres;
import org.tapeline.stack.launch.Ports;

/**
 * Where a stack is.
 *
 * @param root of the checkout
 * @param data folder of its data, logs and mails
 */
public record StackPlace(Path root, Path data, Ports ports) {
  private static final Duration STEP = Duration.ofMillis(250);

  public String gateway() {
    return "http://127.0.0.1:" + ports.gateway();
  }

  public String broker() {
    return "127.0.0.1:" + ports.kafka();
  }

  public Path logs() {
    return data.resolve("log");
  }

  public String jdbcUrl(Part service) {
    return "jdbc:postgresql://127.0.0.1:"
        + ports.postgres()
        + "/"
        + service.code()
        + "?connectTimeout=3&socketTimeout=20";
  }

  public Connection database(Part service) throws SQLException {
    return DriverManager.getConnection(
        jdbcUrl(service), LocalPostgres.USER, LocalPostgres.PASSWORD);
  }

  /** Whether it can be used now. */
  public boolean ready(Part part) {
    return switch (part) {
      case SIZING, FITTING, INVENTORY, NOTIFY -> healthy(part, ports.of(part.code()));
      case BROKER -> answers();
      case DATABASE -> open();
    };
  }

  /** Whether the copy of a service at that port says that it is ready. */
  public boolean healthy(Part service, int port) {
    URI health = URI.create("http://127.0.0.1:" + port + "/" + service.code() + "/q/health/ready");
    HttpRequest request = HttpRequest.newBuilder(health).timeout(Duration.ofSeconds(2)).build();
    try (HttpClient http = HttpClient.newHttpClient()) {
      return http.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private boolean answers() {
    Map<String, Object> settings =
        Map.of(
            "bootstrap.servers", broker(),
            "request.timeout.ms", 3000,
            "default.api.timeout.ms", 3000);
    try (Admin admin = Admin.create(settings)) {
      return !admin.listTopics().names().get(4, TimeUnit.SECONDS).isEmpty();
    } catch (ExecutionException | TimeoutException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  private boolean open() {
    try (Connection connection = database(Part.FITTING)) {
      return connection.isValid(2);
    } catch (SQLException e) {
      return false;
    }
  }

  /**
   * Waits until it can be used.
   *
   * @param inVain says that waiting is of no use
   * @return whether it can
   */
  boolean awaitReady(Part part, Duration atMost, BooleanSupplier inVain) {
    Instant until = Instant.now().plus(atMost);
    while (!ready(part)) {
      if (Instant.now().isAfter(until) || inVain.getAsBoolean()) {
        return false;
      }
      rest(STEP);
    }
    return true;
  }

  public static void rest(Duration time) {
    try {
      Thread.sleep(time);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }
}
