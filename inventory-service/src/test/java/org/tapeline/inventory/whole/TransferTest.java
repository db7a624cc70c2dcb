package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.cancel;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.importing;
import static org.tapeline.inventory.whole.Depot.stateOf;
import static org.tapeline.inventory.whole.Depot.step;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("What is brought from one place to another")
class TransferTest {
  private static final String SIZE = "youth-medium";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private Fitting fitting;
  private final String model = freshModel();
  private final String pad = "pad-" + model;

  @BeforeEach
  void start() {
    Depot.places();
    fitting = new Fitting(bootstrap);
  }

  @AfterEach
  void stop() {
    fitting.close();
  }

  @Test
  @DisplayName("and comes well is in the books of the place to which it came")
  void partCame() {
    UUID refitCase = needsPad();
    step(transferOf(pad), "receive").statusCode(200);
    assertThat(pieces("RIVER")).isZero();
    assertThat(pieces("NORTH")).isEqualTo(1);
    JsonNode reserved = fitting.hears("replacement-reserved", "refitCase", refitCase);
    assertThat(reserved.path("fromPlace").asText()).isEqualTo("RIVER");
  }

  @Test
  @DisplayName("as a part and comes damaged is in no books, and another is asked for")
  void partDamaged() {
    UUID refitCase = needsPad();
    receive(transferOf(pad), 0, 1).statusCode(200);
    assertThat(pieces("RIVER")).isZero();
    assertThat(pieces("NORTH")).isZero();
    assertThat(released(refitCase)).isEqualTo("damaged");
    fitting.hears("replacement-missing", "refitCase", refitCase);
  }

  @Test
  @DisplayName("as a part and does not come stays in the books, and another is asked for")
  void partNotArrived() {
    UUID refitCase = needsPad();
    receive(transferOf(pad), 0, 0).statusCode(200);
    assertThat(pieces("RIVER")).isEqualTo(1);
    assertThat(pieces("NORTH")).isZero();
    assertThat(released(refitCase)).isEqualTo("transfer-cancelled");
    fitting.hears("replacement-missing", "refitCase", refitCase);
  }

  @Test
  @DisplayName("cannot be more than was sent")
  void tooMany() {
    needsPad();
    String transfer = transferOf(pad);
    receive(transfer, 1, 1).statusCode(400).body("detail", containsString("No more can come"));
    receive(transfer, 2, 0).statusCode(400);
    assertThat(Depot.stateOfRequest(transfer)).isEqualTo("REQUESTED");
  }

  @Test
  @DisplayName("and was damaged on the way is another matter than what is brought instead")
  void damagedOnTheWay() {
    String first = helmet(model, SIZE, "RIVER");
    UUID refitCase = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    String transfer = helmetTransfer(first);
    step(transfer, "ship").statusCode(200);
    String second = helmet(model, SIZE, "SOUTH");
    damage("manager", first, "shell", "crack").statusCode(200);
    fitting.hears("restock-requested", "tag", second);

    cancel(transfer, "not-needed").statusCode(200);
    assertThat(stateOf(second)).isEqualTo("reserved");
    step(helmetTransfer(second), "receive").statusCode(200);
    UUID player = UUID.randomUUID();
    fitting.closes(refitCase, player, "cancelled");
    assertThat(fitting.hears("reservation-released", "tag", second).path("why").asText())
        .isEqualTo("case-closed");
  }

  @Test
  @DisplayName("and was retired on the way cannot be received, and says so")
  void retiredOnTheWay() {
    String tag = helmet(model, SIZE, "RIVER");
    fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    String transfer = helmetTransfer(tag);
    step(transfer, "ship").statusCode(200);
    commandOf("manager")
        .contentType("application/json")
        .body("{\"why\":\"lost\"}")
        .post("/api/helmets/" + tag + "/retire")
        .then()
        .statusCode(200);
    step(transfer, "receive").statusCode(409).body("detail", containsString("is retired"));
    receive(transfer, 0, 0).statusCode(200);
  }

  private UUID needsPad() {
    importing("parts", "all-or-none", "place,item,model,quantity\nRIVER," + pad + ",,1\n")
        .statusCode(200);
    return fitting.opens(UUID.randomUUID(), "NORTH", Fitting.part(pad));
  }

  private String transferOf(String item) {
    return fitting.hears("restock-requested", "item", item).path("request").asText();
  }

  private String helmetTransfer(String tag) {
    return fitting.hears("restock-requested", "tag", tag).path("request").asText();
  }

  private String released(UUID refitCase) {
    return fitting.hears("reservation-released", "refitCase", refitCase).path("why").asText();
  }

  private static ValidatableResponse receive(String request, int good, int damaged) {
    return commandOf("depot")
        .contentType("application/json")
        .body("{\"quantity\":" + good + ",\"damaged\":" + damaged + "}")
        .post("/api/restock/" + request + "/receive")
        .then();
  }

  private int pieces(String place) {
    return as("depot")
        .queryParam("place", place)
        .get("/api/stock")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .<Integer>getList("findAll { it.item == '" + pad + "' }.pieces")
        .stream()
        .mapToInt(Integer::intValue)
        .sum();
  }
}
