package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.hasSize;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.importing;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.journal.Freshness;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The same events, mixed across players and topics and each sent twice,")
class AnyOrderTest {
  private static final Duration LONG = Duration.ofSeconds(30);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject Freshness freshness;

  private final String model = freshModel();
  private final String pad = "pad-" + model;
  private final String strap = "strap-" + model;
  private final Season season = new Season();

  @ParameterizedTest(name = "mixed as by {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  @DisplayName("end in one state")
  void oneState(long seed) {
    Depot.places();
    importing(
            "parts",
            "all-or-none",
            "place,item,model,quantity\nNORTH," + pad + ",,1\nNORTH," + strap + ",,3\n")
        .statusCode(200);
    String wanted = Depot.helmet(model, "youth-small", "NORTH");
    String former = Depot.helmet(model, "youth-medium", "NORTH");
    String next = Depot.helmet(model, "youth-large", "RIVER");
    String away = Depot.helmet(model, "adult-small", "SOUTH");

    twoWantOneHelmet(wanted);
    onePlayerChanges(former, next);
    twoWantOnePad();
    threeWantWhatIsNotThere();
    onePlayerMoves(away);
    send(season.mixed(new Random(seed)));

    Map<String, String> helmets = new TreeMap<>();
    helmets.put(wanted, "issued NORTH");
    helmets.put(former, "available NORTH");
    helmets.put(next, "issued NORTH");
    helmets.put(away, "issued SOUTH");
    assertThat(helmets()).isEqualTo(helmets);
    assertThat(openRequests())
        .isEqualTo(Map.of(pad, "1 REQUESTED", "valve-" + model, "2 REQUESTED"));
    assertThat(pieces(pad)).isZero();
    assertThat(pieces(strap)).isEqualTo(1);
    as("fitter.north").get("/api/helmets/" + away).then().statusCode(200);
    as("manager").get("/api/parked").then().statusCode(200).body("", hasSize(0));
  }

  private void twoWantOneHelmet(String tag) {
    UUID fitted = UUID.randomUUID();
    UUID gone = UUID.randomUUID();
    UUID first = season.opened(fitted, "NORTH", Fitting.helmet(model, "youth-small"));
    UUID second = season.opened(gone, "NORTH", Fitting.helmet(model, "youth-small"));
    season.signedOff(fitted, tag, "NORTH");
    season.closed(first, fitted, "fitted");
    season.closed(second, gone, "cancelled");
  }

  private void onePlayerChanges(String former, String next) {
    UUID player = UUID.randomUUID();
    season.signedOff(player, former, "NORTH");
    UUID refitCase = season.opened(player, "NORTH", Fitting.helmet(model, "youth-large"));
    season.signedOff(player, next, "NORTH");
    season.closed(refitCase, player, "fitted");
  }

  private void twoWantOnePad() {
    UUID fitted = UUID.randomUUID();
    UUID refitCase = season.opened(fitted, "NORTH", Fitting.part(pad));
    season.opened(UUID.randomUUID(), "NORTH", Fitting.part(pad));
    season.passed(fitted, "NORTH", model, pad, strap, strap);
    season.closed(refitCase, fitted, "fitted");
  }

  private void threeWantWhatIsNotThere() {
    for (int i = 0; i < 2; i++) {
      season.opened(UUID.randomUUID(), "NORTH", Fitting.part("valve-" + model));
    }
    UUID gone = UUID.randomUUID();
    UUID refitCase = season.opened(gone, "NORTH", Fitting.part("valve-" + model));
    season.closed(refitCase, gone, "cancelled");
  }

  private void onePlayerMoves(String tag) {
    UUID player = UUID.randomUUID();
    season.enrolled(player, "SOUTH");
    season.moved(player, "RIVER");
    season.moved(player, "NORTH");
    season.signedOff(player, tag, "SOUTH");
  }

  /** Sends them and waits until each has been applied, or passed over. */
  private void send(List<Envelope> events) {
    try (TestKafka kafka = new TestKafka(bootstrap)) {
      events.forEach(kafka::publish);
    }
    Instant sent = Instant.now();
    await().atMost(LONG).until(() -> freshness.caughtUpAt().filter(sent::isBefore).isPresent());
  }

  private Map<String, String> helmets() {
    Map<String, String> all = new TreeMap<>();
    as("manager")
        .queryParam("model", model)
        .get("/api/helmets")
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .<Map<String, String>>getList("")
        .forEach(h -> all.put(h.get("tag"), h.get("state") + " " + h.get("place")));
    return all;
  }

  private Map<String, String> openRequests() {
    Map<String, String> all = new TreeMap<>();
    for (Map<String, Object> r : mine("/api/restock")) {
      String before = all.put((String) r.get("item"), r.get("quantity") + " " + r.get("state"));
      assertThat(before).as("one request for one place and item").isNull();
    }
    return all;
  }

  private int pieces(String item) {
    return mine("/api/stock").stream()
        .filter(row -> row.get("item").equals(item) && row.get("place").equals("NORTH"))
        .mapToInt(row -> (Integer) row.get("pieces"))
        .sum();
  }

  /** The rows about what only this test has. */
  private List<Map<String, Object>> mine(String path) {
    return as("depot")
        .get(path)
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .<Map<String, Object>>getList("")
        .stream()
        .filter(row -> (row.get("item") + ":").matches("(.*-|helmet:)" + model + ":.*"))
        .toList();
  }
}
