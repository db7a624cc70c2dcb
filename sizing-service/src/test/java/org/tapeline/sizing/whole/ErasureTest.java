package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.freshNumber;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;
import static org.tapeline.sizing.whole.Association.player;
import static org.tapeline.sizing.whole.Association.players;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Erasing a player")
class ErasureTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject DataSource database;

  @Test
  @DisplayName("leaves tombstones for player and guardian, no local copy, and the history")
  void erased() throws SQLException {
    String number = enrolledAt("NORTH");
    UUID player = idOf(number);
    measure("fitter.north", number, "534", "535").statusCode(200);
    UUID command = UUID.randomUUID();
    erase(command, number);
    erase(command, number);

    try (Broker broker = new Broker(kafka)) {
      await().atMost(SOON).until(() -> broker.ofKey("people", player).getLast().data() == null);
      String guardian =
          broker.ofKey("people", player).getFirst().data().path("guardians").path(0).asText();
      await().atMost(SOON).until(() -> broker.ofKey("people", guardian).getLast().data() == null);
      await()
          .atMost(SOON)
          .until(() -> broker.ofKey("sizing.events", player).getLast().is("player-left"));
      assertThat(broker.ofKey("sizing.events", player)).anyMatch(m -> m.is("head-measured"));
    }
    assertThat(rowsWith("select count(*) from player where player = ?::uuid", player)).isZero();
    String email = "%bea." + number.toLowerCase() + "%";
    assertThat(rowsWith("select count(*) from guardian where email like ?", email)).isZero();
    assertThat(rowsWith("select count(*) from current_state where data::text like ?", email))
        .isZero();
    assertThat(rowsWith("select count(*) from command_log where answer like ?", email)).isZero();
    assertThat(rowsWith("select count(*) from journal where data::text like ?", email)).isZero();
  }

  @Test
  @DisplayName("keeps the history readable for the manager, with erased in the name's place")
  void readable() {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "534", "535").statusCode(200);
    erase(UUID.randomUUID(), number);
    as("manager")
        .get("/api/players/" + number)
        .then()
        .statusCode(200)
        .body("name", equalTo("erased"))
        .body("head.valueMm", equalTo(534.5f));
    as("manager")
        .get("/players/" + number)
        .then()
        .statusCode(200)
        .body(containsString("erased"), containsString("534 mm"))
        .body(not(containsString("Quillfeather")));
    as("fitter.south").get("/players/" + number).then().statusCode(403);
    measure("manager", number, "534", "535").statusCode(422);
  }

  @Test
  @DisplayName("keeps a guardian who also stands for another player")
  void sibling() {
    String erased = freshNumber();
    String sibling = freshNumber();
    String household = "family." + sibling.toLowerCase() + "@";
    String csv =
        players(
            player(erased, "NORTH").replaceAll("bea\\.[a-z0-9-]+@", household),
            player(sibling, "NORTH").replaceAll("bea\\.[a-z0-9-]+@", household));
    importing("players", "all-or-none", csv).statusCode(200).body("accepted", equalTo(2));
    UUID player = idOf(sibling);
    erase(UUID.randomUUID(), erased);
    try (Broker broker = new Broker(kafka)) {
      String guardian =
          broker.ofKey("people", player).getFirst().data().path("guardians").path(0).asText();
      await()
          .atMost(SOON)
          .until(
              () -> broker.ofKey("people", guardian).getLast().data().path("players").size() == 1);
    }
  }

  @Test
  @DisplayName("is for the equipment manager alone")
  void managerOnly() {
    String number = enrolledAt("NORTH");
    commandOf("fitter.north").delete("/api/players/" + number).then().statusCode(403);
    as("manager").delete("/api/players/" + number).then().statusCode(400);
    commandOf("manager").delete("/api/players/LV-9998").then().statusCode(404);
    as("manager").get("/api/players/" + number).then().statusCode(200);
  }

  @Test
  @DisplayName("also forgets what an import with bad rows had answered")
  void badRows() throws SQLException {
    String number = freshNumber();
    String row = player(number, "NORTH").replace("@example.org", "@example");
    importing("players", "good-rows", players(row))
        .statusCode(200)
        .body("errors.column", equalTo(List.of("guardian_email")));
    String email = "%bea." + number.toLowerCase() + "%";
    assertThat(rowsWith("select count(*) from command_log where answer like ?", email)).isZero();
  }

  private static void erase(UUID command, String number) {
    as("manager")
        .header("Idempotency-Key", command)
        .delete("/api/players/" + number)
        .then()
        .statusCode(204);
  }

  private int rowsWith(String sql, Object value) throws SQLException {
    try (Connection connection = database.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setString(1, value.toString());
      try (ResultSet rows = statement.executeQuery()) {
        rows.next();
        return rows.getInt(1);
      }
    }
  }
}
