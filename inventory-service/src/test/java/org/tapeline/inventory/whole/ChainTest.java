package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.importing;
import static org.tapeline.inventory.whole.Depot.stateOf;
import static org.tapeline.inventory.whole.Depot.step;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.time.Instant;
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
@Tag("containers")
@DisplayName("By itself, with each event delivered twice,")
class ChainTest {
  private static final String SIZE = "youth-medium";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private Fitting fitting;
  private final UUID player = UUID.randomUUID();
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
  @DisplayName("a case gets the helmet at the nearest place, and it is brought")
  void nearest() {
    helmet(model, SIZE, "SOUTH");
    String near = helmet(model, SIZE, "RIVER");
    UUID refitCase = fitting.opens(player, "NORTH", Fitting.helmet(model, SIZE));
    JsonNode reserved = fitting.hears("replacement-reserved", "refitCase", refitCase);
    assertThat(reserved.path("tag").asText()).isEqualTo(near);
    assertThat(Instant.parse(reserved.path("readyAt").asText())).isAfter(Instant.now());
    JsonNode transfer = fitting.hears("restock-requested", "tag", near);
    assertThat(transfer.path("kind").asText()).isEqualTo("transfer");
    assertThat(stateOf(near)).isEqualTo("reserved");
  }

  @Test
  @DisplayName("two cases for what is not there share one request, and get it when it comes")
  void missing() {
    UUID first = fitting.opens(player, "NORTH", Fitting.helmet(model, SIZE));
    String request =
        fitting.hears("replacement-missing", "refitCase", first).at("/requests/0").asText();
    UUID second = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    JsonNode missing = fitting.hears("replacement-missing", "refitCase", second);
    assertThat(missing.at("/requests/0").asText()).isEqualTo(request);
    JsonNode merged = fitting.hears("restock-requested", "request", request, 2).getLast();
    assertThat(merged.path("quantity").asInt()).isEqualTo(2);

    step(request, "pick").statusCode(200);
    step(request, "ship").statusCode(200);
    step(request, "receive").statusCode(200);
    step(request, "pick").statusCode(409);
    for (UUID refitCase : new UUID[] {first, second}) {
      JsonNode reserved = fitting.hears("replacement-reserved", "refitCase", refitCase);
      assertThat(reserved.path("fromPlace").asText()).isEqualTo("NORTH");
    }
    assertThat(fitting.hears("restock-received", "request", request).path("tags")).hasSize(2);
  }

  @Test
  @DisplayName("a sign-off issues the helmet, and the former one comes back")
  void issues() {
    String former = helmet(model, SIZE, "NORTH");
    fitting.signsOff(player, former, "NORTH");
    fitting.hears("helmet-issued", "tag", former);
    String next = helmet(model, "youth-large", "NORTH");
    UUID refitCase = fitting.opens(player, "NORTH", Fitting.helmet(model, "youth-large"));
    fitting.hears("replacement-reserved", "refitCase", refitCase);
    fitting.signsOff(player, next, "NORTH", 2);
    fitting.closes(refitCase, player, "fitted");
    fitting.hears("helmet-issued", "tag", next);
    fitting.hears("helmet-returned", "tag", former);
    assertThat(stateOf(next)).isEqualTo("issued");
    assertThat(stateOf(former)).isEqualTo("available");
  }

  @Test
  @DisplayName("a sign-off on a helmet out of use or unknown is refused")
  void refuses() {
    String tag = helmet(model, SIZE, "NORTH");
    damage("manager", tag, "shell", "crack").statusCode(200);
    UUID session = fitting.signsOff(player, tag, "NORTH");
    JsonNode refused = fitting.hears("issue-refused", "session", session);
    assertThat(refused.path("why").asText()).isEqualTo("quarantined");
    UUID unknown = fitting.signsOff(UUID.randomUUID(), "ZZ9990", "NORTH");
    assertThat(fitting.hears("issue-refused", "session", unknown).path("why").asText())
        .isEqualTo("unknown-helmet");
  }

  @Test
  @DisplayName("a reserved helmet that is damaged is released, and another is found")
  void searchesAgain() {
    String first = helmet(model, SIZE, "NORTH");
    UUID refitCase = fitting.opens(player, "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-reserved", "refitCase", refitCase);
    String other = helmet(model, SIZE, "RIVER");
    damage("fitter.north", first, "chin-strap", "missing").statusCode(200);
    fitting.hears("reservation-released", "tag", first);
    JsonNode again = fitting.hears("replacement-reserved", "refitCase", refitCase, 2).getLast();
    assertThat(again.path("tag").asText()).isEqualTo(other);
  }

  @Test
  @DisplayName("a case that is cancelled sets free what was kept for it")
  void releases() {
    String tag = helmet(model, SIZE, "NORTH");
    UUID refitCase = fitting.opens(player, "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-reserved", "refitCase", refitCase);
    fitting.closes(refitCase, player, "cancelled");
    fitting.hears("reservation-released", "refitCase", refitCase);
    assertThat(stateOf(tag)).isEqualTo("available");
  }

  @Test
  @DisplayName("fitted parts leave the stock, below nothing if need be")
  void parts() {
    String item = "pad-" + model;
    importing("parts", "all-or-none", "place,item,model,quantity\nNORTH," + item + ",,1\n")
        .statusCode(200);
    fitting.passes(player, "NORTH", model, item, item);
    fitting.hears("part-used", "item", item, 2);
    await().atMost(Duration.ofSeconds(10)).untilAsserted(() -> assertThat(sum(item)).isEqualTo(-1));
  }

  @Test
  @DisplayName("a part that is there is kept for the case")
  void keepsParts() {
    String item = "pad-" + model;
    importing("parts", "all-or-none", "place,item,model,quantity\nRIVER," + item + ",,1\n")
        .statusCode(200);
    UUID refitCase = fitting.opens(player, "NORTH", Fitting.part(item));
    JsonNode reserved = fitting.hears("replacement-reserved", "refitCase", refitCase);
    assertThat(reserved.path("item").asText()).isEqualTo(item);
    UUID late = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.part(item));
    fitting.hears("replacement-missing", "refitCase", late);
  }

  private int sum(String item) {
    return as("depot")
        .queryParam("place", "NORTH")
        .get("/api/stock")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .<Integer>getList("findAll { it.item == '" + item + "' }.pieces")
        .stream()
        .mapToInt(Integer::intValue)
        .sum();
  }
}
