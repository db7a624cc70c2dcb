package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.tapeline.inventory.whole.Depot.as;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("What to request for a shelf")
class SuggestionsTest extends ShelfPlaces {
  @Test
  @DisplayName("is suggested with its numbers, requested once, and picked from a list")
  void suggested() {
    stock(depot, "chin-strap-small", 40);
    JsonPath suggested = suggestion("chin-strap-small");
    int pieces = suggested.getInt("quantity");
    assertThat(pieces).isPositive();
    assertThat(suggested.getString("because"))
        .contains(PLAYERS + " players", "0 used", "0 on the way")
        .contains(depot + " has " + pieces + " to spare.");
    as("depot")
        .queryParam("place", field)
        .get("/restock/suggestions")
        .then()
        .statusCode(200)
        .body(containsString("Request all of this"))
        .body(containsString(field + " chin-strap-small " + pieces));

    UUID id = UUID.randomUUID();
    String row = field + " chin-strap-small " + pieces;
    for (UUID command : new UUID[] {id, id, UUID.randomUUID()}) {
      as("depot")
          .redirects()
          .follow(false)
          .formParam("commandId", command)
          .formParam("mode", "in-season")
          .formParam("row", row)
          .post("/restock/suggestions")
          .then()
          .statusCode(303);
    }
    JsonNode asked = asked("chin-strap-small", 1);
    assertThat(asked.path("quantity").asInt()).isEqualTo(pieces);
    assertThat(open("chin-strap-small")).hasSize(1);
    new PickingHands(depot).picks(asked.path("request").asText());
  }

  @Test
  @DisplayName("before the season is what the depot needs for its fields, as far as the money goes")
  void beforeTheSeason() {
    JsonPath all = before("");
    int wanted = all.getInt("find { it.item == 'hardware-kit' }.quantity");
    assertThat(wanted % 25).isZero();
    assertThat(wanted).isPositive();
    assertThat(all.getString("find { it.item == 'hardware-kit' }.because"))
        .contains("a season of 12 weeks");
    JsonPath some = before("77.50");
    assertThat(some.getList("granted", Integer.class).stream().mapToInt(n -> n).sum())
        .isPositive()
        .isLessThan(all.getList("quantity", Integer.class).stream().mapToInt(n -> n).sum());
    as("manager")
        .queryParam("place", depot)
        .queryParam("mode", "pre-season")
        .queryParam("budget", "much<")
        .get("/restock/suggestions")
        .then()
        .statusCode(400)
        .body(containsString("much&lt;"))
        .body(containsString("Write an amount"));
    as("fitter.north").get("/api/restock/suggestions").then().statusCode(403);
  }

  private JsonPath before(String budget) {
    return as("manager")
        .queryParam("place", depot)
        .queryParam("mode", "pre-season")
        .queryParam("budget", budget)
        .get("/api/restock/suggestions")
        .then()
        .statusCode(200)
        .body("", hasSize(greaterThan(6)))
        .body("[0].mode", equalTo("pre-season"))
        .extract()
        .jsonPath();
  }
}
