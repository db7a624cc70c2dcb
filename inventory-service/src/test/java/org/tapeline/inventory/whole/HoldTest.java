package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.helmet.HelmetCommand;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.inventory.hold.HoldBatches;
import org.tapeline.inventory.hold.HoldRunner;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A hold")
class HoldTest {
  private static final Duration LONG = Duration.ofSeconds(30);
  private static final String SIZE = "youth-small";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject HoldRunner runner;
  @Inject HoldBatches batches;
  @Inject HelmetDesk desk;
  @Inject Transactions transactions;

  private final String model = freshModel();
  private Fitting fitting;

  @BeforeEach
  void start() {
    Depot.places();
    fitting = new Fitting(bootstrap);
  }

  @AfterEach
  void stop() {
    runner.start();
    fitting.close();
  }

  private static ValidatableResponse place(Map<String, String> more) {
    Map<String, String> ask = new HashMap<>(more);
    ask.putIfAbsent("reason", "recall");
    ask.putIfAbsent("reference", "R-2026-014");
    return commandOf("manager").contentType("application/json").body(ask).post("/api/holds").then();
  }

  private String placed() {
    return place(Map.of("model", model)).statusCode(201).extract().path("hold");
  }

  private static ValidatableResponse lift(String hold, Map<String, String> what) {
    return commandOf("manager")
        .contentType("application/json")
        .body(what)
        .post("/api/holds/" + hold + "/lift")
        .then();
  }

  private static void settled(String hold) {
    await()
        .atMost(LONG)
        .untilAsserted(
            () ->
                as("manager")
                    .get("/api/holds/" + hold)
                    .then()
                    .body("due", equalTo(0))
                    .body("freeing", equalTo(0)));
  }

  private static void is(String tag, String state) {
    await().atMost(LONG).untilAsserted(() -> assertThat(stateOf(tag)).isEqualTo(state));
  }

  @Test
  @DisplayName("takes worn, reserved and free helmets out of use, and says who had which")
  void everyState() {
    String worn = helmet(model, SIZE, "NORTH");
    String kept = helmet(model, SIZE, "SOUTH");
    UUID player = UUID.randomUUID();
    fitting.signsOff(player, worn, "NORTH");
    is(worn, "issued");
    UUID refit = fitting.opens(UUID.randomUUID(), "SOUTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-reserved", "refitCase", refit);

    String hold = placed();

    assertThat(stateOf(kept)).isEqualTo("held");
    JsonNode held = fitting.hears("helmet-held", "tag", worn);
    assertThat(held.get("player").asText()).isEqualTo(player.toString());
    assertThat(held.get("hold").asText()).isEqualTo(hold);
    JsonNode told = fitting.hears("hold-placed", "hold", hold);
    assertThat(told.get("matching").asInt()).isEqualTo(2);
    assertThat(told.get("worn").asInt()).isEqualTo(1);
    assertThat(fitting.hears("reservation-released", "refitCase", refit).get("why").asText())
        .isEqualTo("helmet-held");
    fitting.hears("replacement-missing", "refitCase", refit);
    is(worn, "held");
  }

  @Test
  @DisplayName("holds what comes later at once, and nobody is served with it")
  void lateReceipt() {
    String hold = placed();
    UUID waiting = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", waiting);
    String late = helmet(model, SIZE, "NORTH");
    assertThat(stateOf(late)).isEqualTo("held");
    assertThat(fitting.hears("helmet-held", "tag", late).get("hold").asText()).isEqualTo(hold);
    as("manager").get("/api/holds/" + hold).then().body("held", equalTo(1));
  }

  @Test
  @DisplayName("goes on where it was when the service dies between two batches")
  void restart() {
    List<String> tags = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      tags.add(helmet(model, SIZE, "NORTH"));
    }
    fitting.signsOff(UUID.randomUUID(), tags.getFirst(), "NORTH");
    is(tags.getFirst(), "issued");
    runner.stop();
    String hold = placed();
    batches.batch("due", 2, 0);
    as("manager").get("/api/holds/" + hold).then().body("due", equalTo(3));
    assertThat(stateOf(tags.getFirst())).as("worn ones come first").isEqualTo("held");

    // One whose turn has not come: it is refused all the same, and is held by that.
    String due = tags.getLast();
    fitting.signsOff(UUID.randomUUID(), due, "NORTH");
    assertThat(fitting.hears("issue-refused", "tag", due).get("why").asText()).isEqualTo("held");
    UUID refit = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", refit);

    runner.start();
    settled(hold);
    for (String tag : tags) {
      assertThat(stateOf(tag)).isEqualTo("held");
      assertThat(desk.load(tag).helmet().holds()).containsExactly(UUID.fromString(hold));
    }
    fitting.hears("helmet-held", "hold", hold, 5);
  }

  @Test
  @DisplayName("lets its player be given another helmet before its turn, and holds the former one")
  void anotherMeanwhile() {
    String former = helmet(model, SIZE, "NORTH");
    String next = helmet(freshModel(), SIZE, "NORTH");
    UUID player = UUID.randomUUID();
    fitting.signsOff(player, former, "NORTH");
    is(former, "issued");
    runner.stop();
    placed();
    fitting.signsOff(player, next, "NORTH", 2);
    is(next, "issued");
    assertThat(stateOf(former)).isEqualTo("held");
    assertThat(fitting.hears("helmet-held", "tag", former).get("player").asText())
        .isEqualTo(player.toString());
  }

  @Test
  @DisplayName("waits for an issue that is under way, and the helmet is held all the same")
  void whileIssued() throws Exception {
    String tag = helmet(model, SIZE, "NORTH");
    UUID player = UUID.randomUUID();
    CountDownLatch issued = new CountDownLatch(1);
    CountDownLatch go = new CountDownLatch(1);
    try (ExecutorService two = Executors.newFixedThreadPool(2)) {
      Future<Boolean> issuing = two.submit(() -> issue(tag, player, issued, go));
      assertThat(issued.await(20, TimeUnit.SECONDS)).isTrue();
      Future<String> placing = two.submit(this::placed);
      await().atMost(LONG).until(this::somebodyWaits);
      assertThat(placing.isDone()).isFalse();
      go.countDown();
      assertThat(issuing.get(20, TimeUnit.SECONDS)).isTrue();
      settled(placing.get(20, TimeUnit.SECONDS));
    }
    assertThat(stateOf(tag)).isEqualTo("held");
    assertThat(fitting.hears("helmet-held", "tag", tag).get("player").asText())
        .isEqualTo(player.toString());
  }

  private boolean issue(String tag, UUID player, CountDownLatch done, CountDownLatch go) {
    return transactions.required(
        c -> {
          Instant now = Instant.now();
          HelmetCommand.Issue issue =
              new HelmetCommand.Issue(player, "NORTH", UUID.randomUUID(), LocalDate.now(), now);
          desk.issue(tag, issue, Cause.command(UUID.randomUUID()));
          done.countDown();
          try {
            return go.await(20, TimeUnit.SECONDS);
          } catch (InterruptedException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  private boolean somebodyWaits() {
    return transactions.required(
        c -> {
          try (var row =
              c.createStatement()
                  .executeQuery(
                      "select 1 from pg_stat_activity where wait_event_type = 'Lock'"
                          + " and query like '%hold_helmet%'")) {
            return row.next();
          }
        });
  }

  @Test
  @DisplayName("is lifted in part; what is under another one stays held")
  void lift() {
    String first = helmet(model, SIZE, "NORTH");
    String second = helmet(model, SIZE, "SOUTH");
    String hold = placed();
    String other = place(Map.of("tags", second)).statusCode(201).extract().path("hold");
    settled(hold);
    settled(other);
    lift(hold, Map.of("scope", "tags", "tags", first)).statusCode(200).body("helmets", equalTo(1));
    settled(hold);
    is(first, "available");
    fitting.hears("helmet-freed", "tag", first);
    lift(hold, Map.of("scope", "whole")).statusCode(200).body("helmets", equalTo(1));
    settled(hold);
    assertThat(fitting.hears("helmet-freed", "tag", second).get("state").asText())
        .isEqualTo("held");
    assertThat(stateOf(second)).isEqualTo("held");
    lift(hold, Map.of("scope", "whole")).statusCode(409);
    lift(other, Map.of("scope", "tags", "tags", first))
        .statusCode(400)
        .body("detail", containsString(first));
    lift(other, Map.of("scope", "place", "place", "SOUTH")).statusCode(200);
    is(second, "available");
  }

  @Test
  @DisplayName("for nothing at all is refused, and so is one that is not understood")
  void refused() {
    place(Map.of()).statusCode(400).body("detail", containsString("every helmet"));
    place(Map.of("model", model, "reference", "see Mrs. Meyer"))
        .statusCode(400)
        .body("errors[0].field", equalTo("reference"));
    place(Map.of("tags", "LV2600012")).statusCode(400).body("errors[0].field", equalTo("tags"));
    place(Map.of("madeFrom", "2025-03-02", "madeTo", "2025-03-01"))
        .statusCode(400)
        .body("errors[0].field", equalTo("madeTo"));
  }

  @Test
  @DisplayName("is placed by the equipment manager only; a fitter sees the own field's helmets")
  void access() {
    String north = helmet(model, SIZE, "NORTH");
    String south = helmet(model, SIZE, "SOUTH");
    for (String user : List.of("depot", "fitter.north")) {
      commandOf(user)
          .contentType("application/json")
          .body(Map.of("model", model))
          .post("/api/holds")
          .then()
          .statusCode(403);
      as(user).get("/holds/new").then().statusCode(403);
    }
    as("coach.hawks").get("/holds").then().statusCode(403);
    String hold = placed();
    settled(hold);
    as("fitter.north")
        .get("/api/holds/" + hold + "/helmets")
        .then()
        .body("tag", hasItem(north))
        .body("tag", not(hasItem(south)));
    as("fitter.north").get("/holds/" + hold).then().body(not(containsString(south)));
    aside("fitter.south", hold, north).statusCode(404);
    aside("fitter.north", hold, north).statusCode(200);
    aside("fitter.north", hold, north).statusCode(200);
    assertThat(fitting.hears("helmet-put-aside", "tag", north).get("by").asText())
        .isEqualTo("fitter.north");
    as("manager").get("/api/holds/" + hold).then().body("putAside", equalTo(1));
  }

  private static ValidatableResponse aside(String user, String hold, String tag) {
    return commandOf(user)
        .contentType("application/json")
        .body(Map.of("tag", tag))
        .post("/api/holds/" + hold + "/put-aside")
        .then();
  }

  @Test
  @DisplayName("is asked for, seen, placed, followed and lifted on pages")
  void pages() {
    String tag = helmet(model, SIZE, "NORTH");
    as("manager").get("/holds/new").then().statusCode(200).body(containsString(model));
    form("/holds/new", Map.of("step", "preview", "reason", "recall", "reference", "R-<1"))
        .statusCode(400)
        .body(containsString("R-&lt;1"))
        .body(containsString("as printed on the notice"));
    Map<String, String> ask = Map.of("reason", "recall", "reference", "r-77", "model", model);
    form("/holds/new", with(ask, "step", "preview"))
        .statusCode(200)
        .body(containsString("Helmets: 1. Players: 0."))
        .body(containsString("Place the hold (1)"));
    String path =
        form("/holds/new", with(ask, "step", "place")).statusCode(303).extract().header("Location");
    String page = path.replace("/inventory", "");
    settled(page.replace("/holds/", ""));
    as("manager")
        .get(page)
        .then()
        .statusCode(200)
        .body(containsString("R-77"))
        .body(containsString(tag));
    as("manager").get("/holds").then().statusCode(200).body(containsString("R-77"));
    form(page + "/put-aside", Map.of("tag", tag)).statusCode(303);
    assertThat(as("manager").get(page + "/helmets.csv").asString()).contains(tag).contains("yes");
    form(page + "/lift", Map.of("step", "preview", "scope", "whole"))
        .statusCode(200)
        .body(containsString("would end: 1"));
    form(page + "/lift", Map.of("step", "preview", "scope", "tags"))
        .statusCode(400)
        .body(containsString("Give the tags."));
    form(page + "/lift", Map.of("step", "lift", "scope", "whole")).statusCode(303);
    is(tag, "available");
  }

  private static Map<String, String> with(Map<String, String> some, String key, String value) {
    Map<String, String> more = new HashMap<>(some);
    more.put(key, value);
    return more;
  }

  private static ValidatableResponse form(String path, Map<String, String> fields) {
    return as("manager")
        .redirects()
        .follow(false)
        .formParams(with(fields, "commandId", UUID.randomUUID().toString()))
        .post(path)
        .then();
  }
}
