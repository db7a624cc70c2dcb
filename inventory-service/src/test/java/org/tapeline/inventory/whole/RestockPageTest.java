package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;
import static org.tapeline.inventory.whole.Depot.stateOfRequest;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.xml.XmlPath;
import io.restassured.response.Response;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
@DisplayName("On the restock page")
class RestockPageTest {
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

  @Test
  @DisplayName("some came damaged: the good one is given out, the other is asked for again")
  void someDamaged() {
    Instant before = Instant.parse("2026-08-01T08:00:00Z");
    UUID first = fitting.opensAt(before, "soon", "NORTH", Fitting.helmet(model, SIZE));
    String request = missing(first, 1);
    UUID second =
        fitting.opensAt(before.plusSeconds(60), "soon", "NORTH", Fitting.helmet(model, SIZE));
    missing(second, 1);
    sends(request, Map.of("came", "2", "damaged", "1")).then().statusCode(303);

    JsonNode received = fitting.hears("restock-received", "request", request);
    assertThat(received.path("quantity").asInt()).isEqualTo(1);
    assertThat(received.path("damaged").asInt()).isEqualTo(1);
    assertThat(received.path("short").asInt()).isZero();
    assertThat(received.path("tags")).hasSize(1);
    fitting.hears("replacement-reserved", "refitCase", first);
    assertThat(missing(second, 2)).isNotEqualTo(request);
  }

  @Test
  @DisplayName("fewer came than were asked for: the rest is short")
  void fewer() {
    String request = missing(opens(), 1);
    missing(opens(), 1);
    sends(request, Map.of("came", " 1 ", "damaged", "0")).then().statusCode(303);
    JsonNode received = fitting.hears("restock-received", "request", request);
    assertThat(received.path("quantity").asInt()).isEqualTo(1);
    assertThat(received.path("short").asInt()).isEqualTo(1);
  }

  @Test
  @DisplayName("a number that is none is said beside its field, and what was written stays")
  void badNumber() {
    String request = missing(opens(), 1);
    XmlPath page = refused(sends(request, Map.of("came", "two<", "damaged", "7")), 400);
    assertThat(value(page, "came", request)).isEqualTo("two<");
    assertThat(value(page, "damaged", request)).isEqualTo("7");
    assertThat(error(page, "came", request)).contains("whole number from 1 to 1000");
    assertThat(error(page, "damaged", request)).isEmpty();
    assertThat(attribute(page, "not-all-good-" + request, "open")).isNotNull();
    assertThat(stateOfRequest(request)).isEqualTo("REQUESTED");
  }

  @Test
  @DisplayName("more damaged than came, nothing that came or an empty field is refused")
  void refusedNumbers() {
    String request = missing(opens(), 1);
    assertThat(errorAfter(request, "damaged", "2", "3")).contains("from 0 to 2");
    assertThat(errorAfter(request, "damaged", "2", "")).contains("from 0 to 2");
    assertThat(errorAfter(request, "damaged", "2", "-1")).contains("from 0 to 2");
    assertThat(errorAfter(request, "came", "0", "0")).contains("choose Will not come");
    assertThat(errorAfter(request, "came", "1001", "0")).contains("from 1 to 1000");
    assertThat(errorAfter(request, "came", "", "")).contains("from 1 to 1000");
    assertThat(stateOfRequest(request)).isEqualTo("REQUESTED");
  }

  @Test
  @DisplayName("every field has a label")
  void labels() {
    String request = missing(opens(), 1);
    XmlPath page = page();
    assertThat(label(page, "came-" + request)).isEqualTo("How many came?");
    assertThat(label(page, "damaged-" + request)).isEqualTo("How many of them are damaged?");
  }

  @Test
  @DisplayName("a helmet that arrived damaged is quarantined, and another is found")
  void arrivedDamaged() {
    String broken = helmet(model, SIZE, "RIVER");
    UUID refitCase = opens();
    String transfer = transferOf(broken);
    String other = helmet(model, SIZE, "SOUTH");
    sends(transfer, Map.of("happened", "damaged")).then().statusCode(303);
    assertThat(stateOf(broken)).isEqualTo("quarantined");
    assertThat(placeOf(broken)).isEqualTo("NORTH");
    JsonNode again = fitting.hears("replacement-reserved", "refitCase", refitCase, 2).getLast();
    assertThat(again.path("tag").asText()).isEqualTo(other);
  }

  @Test
  @DisplayName("a helmet that arrived damaged is asked for when there is no other")
  void arrivedDamagedAndNoOther() {
    String broken = helmet(model, SIZE, "RIVER");
    UUID refitCase = opens();
    sends(transferOf(broken), Map.of("happened", "damaged")).then().statusCode(303);
    assertThat(stateOf(broken)).isEqualTo("quarantined");
    assertThat(missing(refitCase, 1)).isNotEmpty();
  }

  @Test
  @DisplayName("a helmet that did not arrive stays in the books where it was, and another is found")
  void didNotArrive() {
    String lost = helmet(model, SIZE, "RIVER");
    UUID refitCase = opens();
    String transfer = transferOf(lost);
    String other = helmet(model, SIZE, "SOUTH");
    sends(transfer, Map.of("happened", "not-arrived")).then().statusCode(303);
    assertThat(fitting.hears("restock-received", "request", transfer).path("short").asInt())
        .isEqualTo(1);
    JsonNode again = fitting.hears("replacement-reserved", "refitCase", refitCase, 2).getLast();
    assertThat(again.path("tag").asText()).isEqualTo(other);
    assertThat(placeOf(lost)).isEqualTo("RIVER");
    assertThat(stateOf(lost)).isEqualTo("available");
  }

  @Test
  @DisplayName("a transfer for which nothing was chosen is not taken as received")
  void nothingChosen() {
    String tag = helmet(model, SIZE, "RIVER");
    opens();
    String transfer = transferOf(tag);
    XmlPath page = refused(sends(transfer, Map.of()), 400);
    assertThat(error(page, "happened", transfer)).contains("Choose what happened");
    assertThat(stateOfRequest(transfer)).isEqualTo("REQUESTED");
    assertThat(placeOf(tag)).isEqualTo("RIVER");
  }

  @Test
  @DisplayName("what was received already is said, whatever the form says")
  void receivedAlready() {
    String request = missing(opens(), 1);
    sends(request, Map.of("came", "1", "damaged", "0")).then().statusCode(303);
    Response again = sends(request, Map.of("came", "1", "damaged", "0"));
    assertThat(alert(refused(again, 409))).contains("received already");
    Response none = sends(UUID.randomUUID().toString(), Map.of("came", "1", "damaged", "0"));
    assertThat(alert(refused(none, 404))).contains("no restock request");
  }

  @Test
  @DisplayName("the form sent twice counts once, and with other numbers the first count")
  void sentTwice() {
    String request = missing(opens(), 1);
    UUID id = UUID.randomUUID();
    sends(request, id, Map.of("came", "1", "damaged", "0")).then().statusCode(303);
    sends(request, id, Map.of("came", "1", "damaged", "0")).then().statusCode(303);
    Response other = sends(request, id, Map.of("came", "5", "damaged", "0"));
    assertThat(alert(refused(other, 409))).contains("other numbers");
    assertThat(fitting.hears("restock-received", "request", request).path("quantity").asInt())
        .isEqualTo(1);
  }

  private UUID opens() {
    return fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
  }

  private String missing(UUID refitCase, int times) {
    List<JsonNode> said = fitting.hears("replacement-missing", "refitCase", refitCase, times);
    assertThat(said).hasSize(times);
    return said.getLast().at("/requests/0").asText();
  }

  private String transferOf(String tag) {
    return fitting.hears("restock-requested", "tag", tag).path("request").asText();
  }

  private static Response sends(String request, Map<String, String> form) {
    return sends(request, UUID.randomUUID(), form);
  }

  private static Response sends(String request, UUID id, Map<String, String> form) {
    return as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", id)
        .formParams(form)
        .post("/restock/" + request + "/receive-not-all-good");
  }

  private static String errorAfter(String request, String field, String came, String damaged) {
    Response answer = sends(request, Map.of("came", came, "damaged", damaged));
    return error(refused(answer, 400), field, request);
  }

  private static XmlPath refused(Response answer, int status) {
    return answer.then().statusCode(status).extract().htmlPath();
  }

  private static XmlPath page() {
    return as("depot").get("/restock").then().statusCode(200).extract().htmlPath();
  }

  private static String value(XmlPath page, String field, String request) {
    return attribute(page, field + "-" + request, "value");
  }

  private static String attribute(XmlPath page, String id, String name) {
    return page.get("**.find { it.@id == '" + id + "' }.attributes().get('" + name + "')");
  }

  private static String label(XmlPath page, String field) {
    return page.getString("**.find { it.@for == '" + field + "' }");
  }

  /** What stands beside the field, which must be tied to it. */
  private static String error(XmlPath page, String field, String request) {
    String id = field + "-error-" + request;
    String said = Objects.toString(page.getString("**.find { it.@id == '" + id + "' }"), "");
    String tied = page.getString("**.findAll { it.@'aria-describedby' == '" + id + "' }.size()");
    assertThat(tied).isEqualTo(said.isEmpty() ? "0" : "1");
    return said;
  }

  private static String alert(XmlPath page) {
    return page.getString("**.find { it.@role == 'alert' }");
  }

  private static String placeOf(String tag) {
    return as("depot").get("/api/helmets/" + tag).then().extract().path("place");
  }
}
