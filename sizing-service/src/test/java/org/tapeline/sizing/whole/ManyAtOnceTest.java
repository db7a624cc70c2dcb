package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Stations of many fields that measure at the same time")
class ManyAtOnceTest {
  /** More than the service has connections to its database. */
  private static final int STATIONS = 120;

  private static final int TIMES = 3;

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

  private static List<Integer> measured(String player) {
    return IntStream.range(0, TIMES)
        .mapToObj(i -> Association.measure("manager", player, "531 mm", "532 mm"))
        .map(answer -> answer.extract().statusCode())
        .toList();
  }
}
