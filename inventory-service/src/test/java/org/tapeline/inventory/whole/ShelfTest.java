package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.step;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.util.UUID;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("By itself, with each event delivered twice, a shelf")
class ShelfTest extends ShelfPlaces {
  @Test
  @DisplayName("that is used up has more brought from the depot, which has some")
  void fromTheDepot() {
    stock(field, "valve", 4);
    stock(depot, "valve", 50);
    passes("valve", 4);
    JsonNode asked = asked("valve", 1);
    assertThat(asked.path("kind").asText()).isEqualTo("transfer");
    assertThat(asked.path("fromPlace").asText()).isEqualTo(depot);
    assertThat(asked.path("causes")).isEmpty();
    assertThat(asked.path("forStock").asInt()).isPositive();
    assertThat(asked.path("quantity")).isEqualTo(asked.path("forStock"));

    int before = pieces(depot, "valve");
    step(asked.path("request").asText(), "receive").statusCode(200);
    assertThat(pieces(field, "valve")).isEqualTo(asked.path("quantity").asInt());
    assertThat(pieces(depot, "valve")).isEqualTo(before - asked.path("quantity").asInt());
    assertThat(suggestion("valve").getInt("quantity")).isZero();
  }

  @Test
  @DisplayName("that is still full enough has nothing requested")
  void fullEnough() {
    stock(field, "liner-crown", 30);
    passes("liner-crown", 1);
    assertThat(pieces(field, "liner-crown")).isEqualTo(29);
    assertThat(open("liner-crown")).isEmpty();
  }

  @Test
  @DisplayName("and a case share one request, and neither is lost when the other is")
  void sharesWithCases() {
    String strap = "jaw-pad-20mm";
    stock(field, strap, 1);
    passes(strap, 1);
    JsonNode shelf = asked(strap, 1);
    assertThat(shelf.path("kind").asText()).isEqualTo("restock");
    int forStock = shelf.path("forStock").asInt();
    assertThat(forStock % 10).as("in packs of 10").isZero();

    UUID player = UUID.randomUUID();
    UUID refitCase = fitting.opens(player, field, Fitting.part(strap));
    JsonNode merged = asked(strap, 2);
    assertThat(merged.path("request")).isEqualTo(shelf.path("request"));
    assertThat(merged.path("quantity").asInt()).isEqualTo(forStock + 1);
    assertThat(merged.path("causes")).hasSize(1);

    passes(strap, 1);
    fitting.closes(refitCase, player, "cancelled");
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .untilAsserted(
            () -> {
              assertThat(open(strap)).hasSize(1);
              int left = (Integer) open(strap).getFirst().get("quantity");
              assertThat(open(strap).getFirst().get("forStock")).isEqualTo(left);
              assertThat(left).isGreaterThanOrEqualTo(forStock);
            });
    assertThat(pieces(field, strap)).isEqualTo(-1);
  }

  @Test
  @DisplayName("is helped out by a field near it that has more than it needs")
  void fromASurplus() {
    stock(other, "hardware-kit", 40);
    stock(field, "hardware-kit", 3);
    passes("hardware-kit", 3);
    JsonNode asked = asked("hardware-kit", 1);
    assertThat(asked.path("fromPlace").asText()).isEqualTo(other);
    assertThat(pieces(other, "hardware-kit")).isEqualTo(40);
  }

  @Test
  @DisplayName("with fewer on it than the books had has the rest requested")
  void counted() {
    stock(depot, "chin-strap-medium", 60);
    stock(field, "chin-strap-medium", 9);
    stock(field, "chin-strap-medium", 0);
    JsonNode asked = asked("chin-strap-medium", 1);
    assertThat(asked.path("quantity")).isEqualTo(asked.path("forStock"));
    receives(asked, asked.path("quantity").asInt() - 1, 1);
    assertThat(pieces(field, "chin-strap-medium")).isEqualTo(asked.path("quantity").asInt() - 1);
    assertThat(pieces(depot, "chin-strap-medium")).isEqualTo(60 - asked.path("quantity").asInt());
  }

  @Test
  @DisplayName("of helmets at a depot has another requested when its last one is out of use")
  void helmets() {
    String size = "shelf-" + number;
    String worn = Depot.helmet("model-a", size, field);
    fitting.signsOff(players.getFirst(), worn, field);
    fitting.hears("helmet-issued", "tag", worn);
    String spare = Depot.helmet("model-a", size, depot);
    Depot.damage("manager", spare, "shell", "crack").statusCode(200);
    JsonNode asked = fitting.asked(depot, "helmet:model-a:" + size, 1);
    assertThat(asked.path("kind").asText()).isEqualTo("restock");
    assertThat(asked.path("forStock").asInt()).isEqualTo(1);
    receives(asked, 2, 0);
    JsonNode received =
        fitting.hears("restock-received", "request", asked.path("request").asText());
    assertThat(received.path("over").asInt()).isEqualTo(1);
    assertThat(received.path("tags")).hasSize(2);
  }

  @Test
  @DisplayName("gets more than was asked for into the books, and that is shown")
  void over() {
    String item = "over-" + number;
    UUID refitCase = fitting.opens(UUID.randomUUID(), field, Fitting.part(item));
    String request =
        fitting.hears("replacement-missing", "refitCase", refitCase).at("/requests/0").asText();
    receives(request, 3, 1);
    JsonNode received = fitting.hears("restock-received", "request", request);
    assertThat(received.path("over").asInt()).isEqualTo(3);
    assertThat(received.path("short").asInt()).isZero();
    assertThat(pieces(field, item)).isEqualTo(3);
    as("depot")
        .get("/restock/received")
        .then()
        .statusCode(200)
        .body(containsString("Over " + number));
  }
}
