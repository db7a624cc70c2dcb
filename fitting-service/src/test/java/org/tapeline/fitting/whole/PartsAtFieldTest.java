package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A session at a field")
class PartsAtFieldTest {
  private static final String NOON = "2026-08-01T12:00:00Z";
  private static final String ONE = "2026-08-01T13:00:00Z";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;

  private Peers peers;
  private Delivery delivery;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
    delivery = new Delivery(peers, transactions);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private Envelope counted(String place, String model, int pieces, String at) {
    return peers.event(
        "inventory.events",
        "stock-counted",
        "stock-" + place,
        place,
        Map.of(
            "place",
            place,
            "item",
            "jaw-pad-20mm",
            "model",
            model,
            "counted",
            pieces,
            "variance",
            pieces,
            "why",
            "count",
            "by",
            "depot",
            "at",
            at));
  }

  private Envelope requested(UUID request, String place) {
    return peers.event(
        "inventory.events",
        "restock-requested",
        "restock-" + request,
        place,
        Map.of(
            "kind",
            "restock",
            "request",
            request,
            "place",
            place,
            "item",
            "jaw-pad-20mm",
            "quantity",
            1,
            "causes",
            List.of(request),
            "expectedAt",
            ONE,
            "at",
            NOON));
  }

  private Envelope came(UUID request, String place, int pieces, String at) {
    return peers.event(
        "inventory.events",
        "restock-received",
        "restock-" + request,
        place,
        Map.of(
            "request",
            request,
            "place",
            place,
            "quantity",
            pieces,
            "short",
            0,
            "damaged",
            0,
            "tags",
            List.of(),
            "by",
            "depot",
            "at",
            at));
  }

  /** Whether the thicker pad that is proposed for a loose cheek is here by the records. */
  private boolean onRecord(Fitter fitter, UUID session) {
    Response answer = fitter.says("/api/sessions/" + session + "/checks", LOOSE);
    assertThat(answer.jsonPath().getString("next.item")).isEqualTo("jaw-pad-20mm");
    return answer.jsonPath().getBoolean("next.onRecord");
  }

  private static final Map<String, String> LOOSE =
      Map.of("check", "jaw-pad-left", "result", "fail", "finding", "loose");

  @Test
  @DisplayName(
      "knows the parts that were counted or came there, each once, whichever is heard first")
  void parts() {
    String place = "PARTS";
    peers.send(peers.field(place));
    Person ada = peers.arrives(place);
    Fitter fitter = new Fitter("manager", place);
    UUID session = fitter.opensWith(ada.player(), ada.tag());
    assertThat(onRecord(fitter, session)).isFalse();

    UUID request = UUID.randomUUID();
    Envelope asked = requested(request, place);
    Envelope late = came(request, place, 1, ONE);
    delivery.inOrder(asked, late, late);
    assertThat(onRecord(fitter, session)).as("one came").isTrue();

    Envelope none = counted(place, "model-a", 0, NOON);
    delivery.inOrder(none, none);
    assertThat(onRecord(fitter, session)).as("the count was before it came").isTrue();

    Envelope later = counted(place, "model-a", 0, "2026-08-01T14:00:00Z");
    delivery.inOrder(later, counted(place, "model-a", 9, NOON));
    assertThat(onRecord(fitter, session)).as("counted again, none left").isFalse();

    delivery.inOrder(counted(place, "model-b", 5, "2026-08-01T14:00:00Z"));
    assertThat(onRecord(fitter, session)).as("pads of another model").isFalse();
  }

  private Envelope moved(String from, String to, String at) {
    String place = from.startsWith("place:") ? from.substring("place:".length()) : "DEPOT";
    Map<String, Object> data = new HashMap<>();
    data.put("move", UUID.randomUUID());
    data.put("place", place);
    data.put("item", "jaw-pad-20mm");
    data.put("quantity", 1);
    data.put("from", from);
    data.put("to", to);
    data.put("why", "brought-along");
    data.put("by", "depot");
    data.put("at", at);
    return peers.event("inventory.events", "part-moved", "stock-" + place, place, data);
  }

  @Test
  @DisplayName("knows the parts that were brought there by hand, and that were taken away")
  void broughtByHand() {
    String place = "PARTS3";
    peers.send(peers.field(place));
    Person ada = peers.arrives(place);
    Fitter fitter = new Fitter("manager", place);
    UUID session = fitter.opensWith(ada.player(), ada.tag());
    Envelope brought = moved("place:DEPOT", "place:" + place, NOON);
    delivery.inOrder(brought, brought);
    assertThat(onRecord(fitter, session)).as("one was brought").isTrue();
    Envelope scrapped = moved("place:" + place, "outside:scrap", ONE);
    delivery.inOrder(scrapped, scrapped);
    assertThat(onRecord(fitter, session)).as("it was thrown away").isFalse();
  }

  @Test
  @DisplayName("takes a length for what it says, and refuses to call it a pass")
  void measured() {
    Person ada = peers.arrives("PARTS2");
    Fitter fitter = new Fitter("manager", "PARTS2");
    UUID session = fitter.opensWith(ada.player(), ada.tag());
    String checks = "/api/sessions/" + session + "/checks";
    Response refused =
        Fitter.post(
            "manager", checks, Map.of("check", "brow-clearance", "result", "pass", "valueMm", 12));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.asString()).contains("19 to 38 mm passes", "valueMm");
    Response failed =
        fitter.says(
            checks,
            Map.of("check", "brow-clearance", "result", "fail", "finding", "high", "valueMm", 12));
    assertThat(failed.jsonPath().getString("next.remedy")).as("12 mm is low").isEqualTo("add-air");
  }

  @Test
  @DisplayName("is in one fitter's hands until another takes it over")
  void hands() {
    Person ada = peers.arrives("NORTH");
    Fitter fitter = new Fitter("fitter.north", "NORTH");
    UUID session = fitter.opensWith(ada.player(), ada.tag());
    String checks = "/api/sessions/" + session + "/checks";
    Map<String, String> pass = Map.of("check", "labels", "result", "pass");
    Response other = Fitter.post("manager", checks, pass);
    assertThat(other.statusCode()).isEqualTo(409);
    assertThat(other.asString()).contains("fitter.north has this session in hand");
    Fitter manager = new Fitter("manager", "NORTH");
    manager.pauses(manager.opens(ada.player()));
    manager.resumes(session);
    assertThat(Fitter.post("manager", checks, pass).statusCode()).isEqualTo(200);
    assertThat(Fitter.post("fitter.north", checks, pass).statusCode()).isEqualTo(409);
  }
}
