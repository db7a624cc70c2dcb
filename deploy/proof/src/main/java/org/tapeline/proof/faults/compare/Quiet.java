package org.tapeline.proof.faults.compare;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.clients.admin.OffsetSpec;
import org.apache.kafka.clients.consumer.OffsetAndMetadata;
import org.apache.kafka.common.TopicPartition;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;

/** Waits until nothing is on its way any more: all sent, all read, all told. */
public final class Quiet {
  private static final Duration STILL = Duration.ofSeconds(4);
  private static final Map<Part, String> WORK = new EnumMap<>(Part.class);

  static {
    // By these, each service says that it has still something to do at once.
    WORK.put(Part.INVENTORY, "select count(*) from hold_helmet where step in ('due', 'freeing')");
    WORK.put(
        Part.NOTIFY,
        "select (select count(*) from notice where next_try_at < now() + interval '2 minutes')"
            + " + (select count(*) from refit_case where wait_until is not null)"
            + " + (select count(*) from fit where wait_until is not null)"
            + " + (select count(*) from depot_matter)");
  }

  private final StackPlace place;

  public Quiet(StackPlace place) {
    this.place = place;
  }

  /**
   * Returns when it has been quiet for a moment.
   *
   * @return what is still on its way when the time is over; empty when all is quiet
   */
  public List<String> await(Duration atMost) {
    Instant until = Instant.now().plus(atMost);
    List<String> restless = List.of("not looked yet");
    String before = "";
    Instant since = Instant.now();
    while (Instant.now().isBefore(until)) {
      restless = new ArrayList<>();
      String now = look(restless);
      if (!restless.isEmpty() || !now.equals(before)) {
        before = now;
        since = Instant.now();
      } else if (Instant.now().isAfter(since.plus(STILL))) {
        return List.of();
      }
      StackPlace.rest(Duration.ofMillis(400));
    }
    return restless.isEmpty() ? List.of("the journals grow and grow") : restless;
  }

  /** What the journals hold, as one word; what is to be done is added to the list. */
  private String look(List<String> restless) {
    List<String> lengths = new ArrayList<>();
    for (Part service : Part.SERVICES) {
      try (Connection connection = place.database(service)) {
        lengths.add(one(connection, "select coalesce(max(position), 0) from journal"));
        busy(connection, service, "unsent", "select count(*) from journal_unsent", restless);
        busy(
            connection,
            service,
            "unsent people",
            "select count(*) from current_state where unsent",
            restless);
        if (WORK.containsKey(service)) {
          busy(connection, service, "to do", WORK.get(service), restless);
        }
      } catch (SQLException e) {
        restless.add("the database of " + service.code() + ": " + e.getMessage());
      }
    }
    lag(restless);
    return String.join(" ", lengths);
  }

  private static void busy(
      Connection connection, Part service, String what, String sql, List<String> restless)
      throws SQLException {
    String count = one(connection, sql);
    if (!count.equals("0")) {
      restless.add(service.code() + ": " + what + " " + count);
    }
  }

  private static String one(Connection connection, String sql) throws SQLException {
    try (Statement select = connection.createStatement();
        ResultSet row = select.executeQuery(sql)) {
      row.next();
      return row.getString(1);
    }
  }

  private void lag(List<String> restless) {
    Map<String, Object> settings =
        Map.of(
            "bootstrap.servers", place.broker(),
            "request.timeout.ms", 4000,
            "default.api.timeout.ms", 5000);
    try (Admin admin = Admin.create(settings)) {
      for (Part service : Part.SERVICES) {
        Map<TopicPartition, OffsetAndMetadata> at =
            admin
                .listConsumerGroupOffsets("tapeline-" + service.code())
                .partitionsToOffsetAndMetadata()
                .get(5, TimeUnit.SECONDS);
        long behind =
            admin
                .listOffsets(
                    at.keySet().stream()
                        .collect(Collectors.toMap(p -> p, p -> OffsetSpec.latest())))
                .all()
                .get(5, TimeUnit.SECONDS)
                .entrySet()
                .stream()
                .mapToLong(e -> e.getValue().offset() - at.get(e.getKey()).offset())
                .sum();
        if (behind > 0) {
          restless.add(service.code() + ": " + behind + " records to read");
        }
      }
    } catch (ExecutionException | TimeoutException e) {
      restless.add("the broker: " + e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }
}
