package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.notNullValue;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Stations of many fields that measure at the same time")
class ManyAtOnceTest {
  /** More than the service has connections to its database. */
  private static final int STATIONS = 120;

  private static final int TIMES = 3;

  @Inject DataSource database;

  @Test
  @DisplayName("are all served, each time")
  void allServed() throws Exception {
    List<String> players = Stream.generate(Association::freshNumber).limit(STATIONS).toList();
    String[] rows =
        players.stream().map(n -> Association.player(n, "NORTH")).toArray(String[]::new);
    Association.importing("charts", "all-or-none", Association.CHARTS).statusCode(200);
    Association.importing("players", "all-or-none", Association.players(rows)).statusCode(200);
    List<Future<List<Integer>>> stations = new ArrayList<>();
    try (ExecutorService at = Executors.newFixedThreadPool(STATIONS)) {
      players.forEach(player -> stations.add(at.submit(() -> measured(player))));
    }
    for (Future<List<Integer>> station : stations) {
      assertThat(station.get(1, TimeUnit.MINUTES)).containsOnly(200);
    }
  }

  @Test
  @DisplayName("are told to send it again where the database cannot be reached")
  void nothingFree() throws SQLException {
    String player = Association.enrolledAt("NORTH");
    List<Connection> taken = new ArrayList<>();
    try {
      takeAll(taken);
      Association.measure("manager", player, "531 mm", "532 mm")
          .statusCode(503)
          .contentType("application/problem+json")
          .header("Retry-After", notNullValue())
          .body("detail", containsString("send it again"));
    } finally {
      for (Connection connection : taken) {
        connection.close();
      }
    }
    Association.measure("manager", player, "531 mm", "532 mm").statusCode(200);
  }

  private void takeAll(List<Connection> taken) {
    try {
      while (taken.size() < STATIONS) {
        taken.add(database.getConnection());
      }
    } catch (SQLException none) {
      return;
    }
    throw new IllegalStateException("The pool is larger than this test thinks");
  }

  private static List<Integer> measured(String player) {
    return IntStream.range(0, TIMES)
        .mapToObj(i -> Association.measure("manager", player, "531 mm", "532 mm"))
        .map(answer -> answer.extract().statusCode())
        .toList();
  }
}
