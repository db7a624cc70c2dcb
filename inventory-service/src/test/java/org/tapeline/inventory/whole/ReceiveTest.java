package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.stateOf;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.helmet.AssetTag;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Receiving helmets")
class ReceiveTest {
  private final String model = freshModel();

  /** Six digits that no other test uses, with their check character. */
  private static String tag() {
    return AssetTag.withCheck("RX" + (100_000 + Math.abs(UUID.randomUUID().hashCode() % 900_000)))
        .value();
  }

  @BeforeEach
  void places() {
    Depot.places();
  }

  private ValidatableResponse begin(UUID id, String made) {
    return as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", id)
        .formParam("model", model)
        .formParam("size", "youth-small")
        .formParam("lot", "R-1")
        .formParam("manufacturedOn", made)
        .formParam("certifiedUntil", "2027-08-01")
        .formParam("place", "DEPOT")
        .post("/receive")
        .then();
  }

  private static ValidatableResponse scan(UUID delivery, UUID command, String typed) {
    return as("depot")
        .redirects()
        .follow(false)
        .formParam("commandId", command)
        .formParam("tag", typed)
        .post("/receive/" + delivery)
        .then();
  }

  private static String page(UUID delivery) {
    return as("depot").get("/receive/" + delivery).then().statusCode(200).extract().asString();
  }

  @Test
  @DisplayName("by scanning: each tag in any writing, the latest first, a reload keeps all")
  void scanning() {
    UUID delivery = UUID.randomUUID();
    begin(delivery, "2026-01-15").statusCode(303);
    String first = tag();
    String second = tag();
    UUID command = UUID.randomUUID();
    scan(delivery, command, first.toLowerCase(Locale.ROOT)).statusCode(303);
    scan(delivery, command, first.toLowerCase(Locale.ROOT)).statusCode(303);
    scan(delivery, UUID.randomUUID(), "https://helmets.example/inventory/helmets/" + second)
        .statusCode(303);
    assertThat(page(delivery)).contains("2 taken in");
    assertThat(page(delivery).indexOf(second)).isLessThan(page(delivery).indexOf(first));
    as("depot")
        .get("/api/helmets/" + first)
        .then()
        .body("state", equalTo("available"))
        .body("lot", equalTo("R-1"))
        .body("certifiedUntil", equalTo("2027-08-01"));
    scan(delivery, UUID.randomUUID(), first)
        .statusCode(409)
        .body(containsString("as number 1 of this delivery"));
    as("fitter.north").get("/receive").then().statusCode(403);
  }

  @Test
  @DisplayName("tells a wrong tag at the field, keeps it, and offers the one that is expected")
  void wrong() {
    String ordered = tag();
    order(
            "{\"model\":\"%s\",\"size\":\"youth-small\",\"place\":\"DEPOT\",\"tags\":[\"%s\"]}",
            ordered)
        .statusCode(201);
    UUID delivery = UUID.randomUUID();
    begin(delivery, "2026-01-15").statusCode(303);
    char last = ordered.charAt(ordered.length() - 1);
    String misread = ordered.substring(0, ordered.length() - 1) + (last == 'X' ? 'Y' : 'X');
    scan(delivery, UUID.randomUUID(), misread)
        .statusCode(400)
        .body(containsString("tag-error"))
        .body(containsString("value=\"" + misread + "\""))
        .body(containsString("<button name=\"tag\" value=\"" + ordered + "\">"));
    scan(delivery, UUID.randomUUID(), "").statusCode(400).body(containsString("Type or scan"));
    begin(UUID.randomUUID(), LocalDate.now().plusMonths(1).toString())
        .statusCode(400)
        .body(containsString("still to come"))
        .body(containsString("value=\"" + model + "\""));
  }

  private ValidatableResponse order(String body, Object... values) {
    Object[] all = new Object[values.length + 1];
    all[0] = model;
    System.arraycopy(values, 0, all, 1, values.length);
    return commandOf("depot")
        .contentType("application/json")
        .body(body.formatted(all))
        .post("/api/helmets/orders")
        .then();
  }

  @Test
  @DisplayName("knows a helmet that was ordered, and refuses it as another kind")
  void ordered() {
    List<String> tags =
        order(
                "{\"model\":\"%s\",\"size\":\"youth-small\",\"place\":\"DEPOT\",\"count\":2,"
                    + "\"expectedOn\":\"2026-12-24\"}")
            .statusCode(201)
            .extract()
            .jsonPath()
            .getList("tags");
    assertThat(tags).hasSize(2);
    assertThat(stateOf(tags.getFirst())).isEqualTo("ordered");
    UUID delivery = UUID.randomUUID();
    begin(delivery, "2026-01-15").statusCode(303);
    scan(delivery, UUID.randomUUID(), tags.getFirst()).statusCode(303);
    assertThat(page(delivery)).contains("was ordered");
    assertThat(stateOf(tags.getFirst())).isEqualTo("available");
    one(tags.getLast(), "youth-large")
        .statusCode(409)
        .body("type", containsString("ordered-otherwise"));
    assertThat(stateOf(tags.getLast())).isEqualTo("ordered");
    order("{\"model\":\"%s\",\"size\":\"youth-small\",\"place\":\"DEPOT\",\"tags\":[\"AB\"]}")
        .statusCode(400)
        .body("errors[0].field", equalTo("tags[0]"));
    order("{\"model\":\"%s\",\"size\":\"youth-small\",\"place\":\"NOWHERE\"}")
        .statusCode(400)
        .body("errors.field", equalTo(List.of("place", "count")));
  }

  private ValidatableResponse one(String tag, String size) {
    return commandOf("depot")
        .contentType("application/json")
        .body(
            """
            {"tag":"%s","model":"%s","size":"%s","lot":"R-2","manufacturedOn":"2026-01-15",
             "place":"NORTH"}
            """
                .formatted(tag, model, size))
        .post("/api/helmets")
        .then();
  }

  @Test
  @DisplayName("one by one over JSON dates it by the policy, and one tag is one helmet")
  void one() {
    String tag = tag();
    one(tag, "youth-small").statusCode(201).body("tag", equalTo(tag));
    as("depot").get("/api/helmets/" + tag).then().body("certifiedUntil", equalTo("2027-01-14"));
    one(tag, "youth-small").statusCode(409).body("type", containsString("tag-taken"));
    one("", "youth-small").statusCode(201);
    one(tag(), "Youth Small").statusCode(400).body("errors[0].field", equalTo("size"));
  }

  @Test
  @DisplayName("one without a tag gives it a fresh one, once, and offers its label")
  void untagged() {
    UUID delivery = UUID.randomUUID();
    begin(delivery, "2026-01-15").statusCode(303);
    UUID command = UUID.randomUUID();
    for (int i = 0; i < 2; i++) {
      as("depot")
          .redirects()
          .follow(false)
          .formParam("commandId", command)
          .formParam("untagged", "yes")
          .post("/receive/" + delivery)
          .then()
          .statusCode(303);
    }
    assertThat(page(delivery)).contains("1 taken in", "/inventory/labels?delivery=" + delivery);
    as("depot")
        .queryParam("delivery", delivery)
        .get("/labels")
        .then()
        .body(containsString("1 label"));
  }
}
