package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.cancel;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;
import static org.tapeline.inventory.whole.Depot.stateOfRequest;
import static org.tapeline.inventory.whole.Depot.step;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("What is cancelled by hand")
class CancelledRestockTest {
  private static final String SIZE = "youth-medium";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private Fitting fitting;
  private final String model = freshModel();

  @BeforeEach
  void start() {
    Depot.places();
    fitting = new Fitting(bootstrap);
  }

  @AfterEach
  void stop() {
    fitting.close();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"not-available", "mistake"})
  @DisplayName("while cases wait and there is no other is asked for anew, for all of them, as")
  void askedForAnew(String why) {
    UUID first = opens(UUID.randomUUID());
    String request = missing(first, 1);
    UUID second = opens(UUID.randomUUID());
    missing(second, 1);
    step(request, "ship").statusCode(200);

    cancel(request, why).statusCode(200).body("state", endsWith("cancelled"));
    assertThat(fitting.hears("restock-cancelled", "request", request).path("why").asText())
        .isEqualTo(why);
    String anew = missing(first, 2);
    assertThat(anew).isNotEqualTo(request);
    assertThat(missing(second, 2)).isEqualTo(anew);
    JsonNode asked = fitting.hears("restock-requested", "request", anew, 2).getLast();
    assertThat(asked.path("quantity").asInt()).isEqualTo(2);

    step(anew, "receive").statusCode(200);
    fitting.hears("replacement-reserved", "refitCase", first);
    fitting.hears("replacement-reserved", "refitCase", second);
  }

  @Test
  @DisplayName("by page as what will not come is asked for anew")
  void byPage() {
    UUID refitCase = opens(UUID.randomUUID());
    String request = missing(refitCase, 1);
    as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .post("/restock/" + request + "/cancel")
        .then()
        .statusCode(303);
    assertThat(missing(refitCase, 2)).isNotEqualTo(request);
  }

  @Test
  @DisplayName("gives way to a helmet that is in stock after all")
  void otherHelmet() {
    String tag = helmet(model, SIZE, "RIVER");
    UUID refitCase = opens(UUID.randomUUID());
    cancel(transferOf(tag, 1), "not-available").statusCode(200);
    String request = missing(refitCase, 1);

    cancel(request, "not-available").statusCode(200);
    JsonNode again = fitting.hears("replacement-reserved", "refitCase", refitCase, 2).getLast();
    assertThat(again.path("tag").asText()).isEqualTo(tag);
  }

  @Test
  @DisplayName("as not needed is refused while cases wait, and says how many")
  void stillNeeded() {
    UUID first = opens(UUID.randomUUID());
    String request = missing(first, 1);
    cancel(request, "not-needed")
        .statusCode(409)
        .contentType("application/problem+json")
        .body("type", endsWith("still-needed"))
        .body("detail", containsString("1 re-fit case waits for this"));
    missing(opens(UUID.randomUUID()), 1);
    cancel(request, "not-needed")
        .statusCode(409)
        .body("detail", containsString("2 re-fit cases wait for this"));
    assertThat(stateOfRequest(request)).isEqualTo("REQUESTED");
  }

  @Test
  @DisplayName("as not needed is gone when nobody waits any more")
  void notNeeded() {
    UUID player = UUID.randomUUID();
    UUID refitCase = opens(player);
    String request = missing(refitCase, 1);
    step(request, "pick").statusCode(200);
    cancel(request, "not-needed").statusCode(409);
    fitting.closes(refitCase, player, "cancelled");
    // Cases of one player are told of in order, so that the close is done when this one is known.
    UUID next = opensPart(player);
    fitting.hears("replacement-missing", "refitCase", next);

    cancel(request, "not-needed").statusCode(200);
    assertThat(stateOfRequest(request)).isEqualTo("CANCELLED");
    cancel(request, "not-needed")
        .statusCode(409)
        .body("detail", containsString("cancelled already"));
  }

  @Test
  @DisplayName("as not needed is refused for a transfer that a case waits for")
  void neededTransfer() {
    String tag = helmet(model, SIZE, "RIVER");
    opens(UUID.randomUUID());
    String transfer = transferOf(tag, 1);
    cancel(transfer, "not-needed").statusCode(409).body("type", endsWith("still-needed"));
    assertThat(stateOf(tag)).isEqualTo("reserved");
  }

  @Test
  @DisplayName("as a transfer sets the helmet free, and another is brought")
  void transfer() {
    String near = helmet(model, SIZE, "RIVER");
    UUID refitCase = opens(UUID.randomUUID());
    String transfer = transferOf(near, 1);
    String far = helmet(model, SIZE, "SOUTH");
    step(transfer, "ship").statusCode(200);

    cancel(transfer, "not-available").statusCode(200);
    assertThat(fitting.hears("reservation-released", "tag", near).path("why").asText())
        .isEqualTo("transfer-cancelled");
    JsonNode again = fitting.hears("replacement-reserved", "refitCase", refitCase, 2).getLast();
    assertThat(again.path("tag").asText()).isEqualTo(far);
    transferOf(far, 1);
    assertThat(stateOf(near)).isEqualTo("available");
  }

  @Test
  @DisplayName("leaves alone what else is on its way for the case")
  void otherNeed() {
    String pad = "pad-" + model;
    UUID refitCase = fitting.opensFor("NORTH", Fitting.helmet(model, SIZE), Fitting.part(pad));
    JsonNode first = fitting.hears("replacement-missing", "refitCase", refitCase);
    assertThat(first.path("requests")).hasSize(2);
    String helmets = requestFor("helmet:" + model + ":" + SIZE);
    step(helmets, "ship").statusCode(200);

    cancel(requestFor(pad), "not-available").statusCode(200);
    JsonNode again = fitting.hears("replacement-missing", "refitCase", refitCase, 2).getLast();
    List<String> asked = again.path("requests").valueStream().map(JsonNode::asText).toList();
    assertThat(asked).hasSize(2).contains(helmets);
    assertThat(fitting.hears("restock-requested", "item", pad, 2)).hasSize(2);
  }

  private UUID opens(UUID player) {
    return fitting.opens(player, "NORTH", Fitting.helmet(model, SIZE));
  }

  private UUID opensPart(UUID player) {
    return fitting.opens(player, "NORTH", Fitting.part("strap-" + model));
  }

  private String missing(UUID refitCase, int times) {
    List<JsonNode> said = fitting.hears("replacement-missing", "refitCase", refitCase, times);
    assertThat(said).hasSize(times);
    return said.getLast().at("/requests/0").asText();
  }

  private String transferOf(String tag, int times) {
    return fitting.hears("restock-requested", "tag", tag, times).getLast().path("request").asText();
  }

  private String requestFor(String item) {
    return fitting.hears("restock-requested", "item", item).path("request").asText();
  }
}
