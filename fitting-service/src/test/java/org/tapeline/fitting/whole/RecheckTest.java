package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;
import static org.tapeline.fitting.whole.Fitter.post;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.today.WhenTimeGoesByThenTellDue;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A fit is looked at again")
class RecheckTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;
  @Inject WhenTimeGoesByThenTellDue time;

  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  /** Somebody with a field of one's own, so that no other test's weather counts. */
  private Person fitted(String field) {
    Person ada = peers.arrives(field);
    UUID session = new Fitter("manager", field).fits(ada.player(), ada.tag());
    peers.send(peers.issued(ada.tag(), ada.player(), session));
    state(ada, "may-wear");
    return ada;
  }

  private static void state(Person person, String code) {
    await()
        .atMost(PATIENCE)
        .untilAsserted(
            () -> {
              Response answer = as("manager").get("/api/players/" + person.player());
              assertThat(answer.jsonPath().getString("state.code"))
                  .as(answer.asString())
                  .isEqualTo(code);
            });
  }

  private static String reason(Person person) {
    return as("manager")
        .get("/api/players/" + person.player())
        .jsonPath()
        .getString("state.reason");
  }

  private List<Message> told(String event, Person person) {
    return peers.kafka.await(
        "fitting.events",
        Integer.MAX_VALUE,
        Duration.ofSeconds(2),
        m ->
            m.type().matches("org.tapeline.fitting." + event + ".v[0-9]+")
                && m.key().equals(person.player().toString()));
  }

  /** The sign-off was made that much longer ago. */
  private void goesBy(Person person, int days) {
    transactions.required(
        c -> {
          try (PreparedStatement change =
              c.prepareStatement(
                  "update sign_off set at = at - make_interval(days => ?) where player = ?")) {
            change.setInt(1, days);
            change.setObject(2, person.player());
            return change.executeUpdate();
          }
        });
  }

  @Test
  @DisplayName("after a week: due is told once, however many look; after ten days it has lapsed")
  void weekly() {
    Person ada = fitted("WEEKLY");
    goesBy(ada, 8);
    state(ada, "check-today");
    CompletableFuture<?>[] two =
        Stream.generate(() -> CompletableFuture.runAsync(time::lookAtAll))
            .limit(2)
            .toArray(CompletableFuture[]::new);
    CompletableFuture.allOf(two).join();
    time.lookAtAll();
    Message due = peers.hears("recheck-due", ada.player());
    assertThat(due.data().get("rule").asText()).isEqualTo("weekly");
    assertThat(due.data().get("tag").asText()).isEqualTo(ada.tag());
    assertThat(told("recheck-due", ada)).hasSize(1);

    goesBy(ada, 3);
    state(ada, "do-not-wear");
    time.lookAtAll();
    time.lookAtAll();
    Message lapsed = peers.hears("sign-off-lapsed", ada.player());
    assertThat(lapsed.data().get("why").asText()).isEqualTo("recheck-overdue");
    assertThat(told("sign-off-lapsed", ada)).hasSize(1);
    assertThat(reason(ada)).isEqualTo("The sign-off has lapsed: fit again");
  }

  @Test
  @DisplayName("after a haircut: check today at once, until the next pass")
  void haircut() {
    Person ada = fitted("NORTH");
    Fitter fitter = new Fitter("manager", "NORTH");
    fitter.says("/api/hair-changes", Map.of("player", ada.number(), "hair", "short"));
    assertThat(peers.hears("recheck-due", ada.player()).data().get("rule").asText())
        .isEqualTo("hair-changed");
    state(ada, "check-today");
    assertThat(reason(ada)).isEqualTo("The hair has changed since the fit");
    fitter.fits(ada.player(), ada.tag());
    state(ada, "may-wear");
  }

  @Test
  @DisplayName("by who works at the field, and with hair that there is")
  void hairRefused() {
    Person ada = fitted("HAIR-2");
    Map<String, String> cut = Map.of("player", ada.number(), "hair", "short");
    assertThat(post("fitter.south", "/api/hair-changes", cut).statusCode()).isEqualTo(403);
    Response wrong =
        post("manager", "/api/hair-changes", Map.of("player", ada.number(), "hair", "blue"));
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.jsonPath().getString("errors[0].field")).isEqualTo("hair");
  }

  @Test
  @DisplayName("when it is colder than at the fit, with the numbers; each cold spell told once")
  void colder() {
    Person ada = fitted("COLD");
    Fitter fitter = new Fitter("manager", "COLD");
    fitter.says("/api/conditions", Map.of("field", "COLD", "air", "72 F"));
    state(ada, "may-wear");
    fitter.says("/api/conditions", Map.of("field", "COLD", "air", "4"));
    fitter.says("/api/conditions", Map.of("field", "COLD", "air", "3"));
    state(ada, "check-today");
    assertThat(told("recheck-due", ada)).hasSize(1);
    String player = as("manager").get("/players/" + ada.player()).asString();
    assertThat(player)
        .contains("Fitted at 24 °C and 300 m; now 3 °C at 300 m: the air takes 7.1 % less room.");
    String late = Instant.now().minusSeconds(3600).toString();
    fitter.says("/api/conditions", Map.of("field", "COLD", "air", "24", "at", late));
    state(ada, "check-today");
  }

  @Test
  @DisplayName("with conditions that can be: a field, a temperature, a time that counts")
  void conditionsRefused() {
    Map<String, String> body =
        Map.of("field", "NOWHERE", "air", "warm", "at", "2020-01-01T00:00:00Z");
    Response answer = post("manager", "/api/conditions", body);
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.jsonPath().getList("errors.field")).containsExactly("field", "air", "at");
    peers.arrives("SOUTH");
    assertThat(
            post("fitter.north", "/api/conditions", Map.of("field", "SOUTH", "air", "4"))
                .statusCode())
        .isEqualTo(403);
    Response page =
        as("manager")
            .formParam("commandId", UUID.randomUUID())
            .formParam("field", "SOUTH")
            .formParam("air", "mild")
            .formParam("unit", "C")
            .post("/conditions");
    assertThat(page.statusCode()).isEqualTo(422);
    assertThat(page.asString()).contains("id=\"air-error\"", "value=\"mild\"");
  }

  @Test
  @DisplayName("after damage on the surface, also when the report comes twice")
  void cosmeticDamage() {
    Person ada = fitted("SCRATCH");
    Envelope scratched = damage(ada, "cosmetic", Instant.now());
    peers.send(scratched, scratched);
    state(ada, "check-today");
    assertThat(told("recheck-due", ada)).hasSize(1);
  }

  private Envelope damage(Person person, String severity, Instant at) {
    return peers.helmet(
        person.tag(),
        "damage-reported",
        Map.of(
            "report",
            UUID.randomUUID(),
            "tag",
            person.tag(),
            "where",
            "shell",
            "what",
            "scratch",
            "severity",
            severity,
            "player",
            person.player(),
            "place",
            "NORTH",
            "by",
            "fitter.north",
            "at",
            at));
  }

  @Test
  @DisplayName("not for damage from before the fit that is heard of late")
  void earlierDamage() {
    Person ada = fitted("SCRATCH-2");
    peers.send(damage(ada, "cosmetic", Instant.now().minusSeconds(3600)));
    time.lookAtAll();
    assertThat(told("recheck-due", ada)).isEmpty();
    state(ada, "may-wear");
  }

  @Test
  @DisplayName("when the head should be measured again, and no more once it was")
  void remeasure() {
    Person ada = fitted("MEASURE");
    Envelope due =
        peers.event(
            "sizing.events",
            "remeasure-due",
            "remeasure-" + ada.player(),
            ada.player(),
            Map.of(
                "player",
                ada.player(),
                "measuredOn",
                "2026-03-01",
                "why",
                "old",
                "chance",
                0.1,
                "at",
                Instant.now()));
    peers.send(due, due);
    state(ada, "check-today");
    assertThat(reason(ada)).isEqualTo("The head should be measured again");
    peers.send(measured(ada));
    state(ada, "may-wear");
  }

  @Test
  @DisplayName("when the head was measured near the edge of its size, measured and advised alike")
  void nearEdge() {
    Person ada = fitted("EDGE");
    peers.send(measured(ada));
    peers.send(
        peers.sizing(
            ada.player(),
            "size-advised",
            Map.of(
                "player",
                ada.player(),
                "valueMm",
                555,
                "advice",
                List.of(
                    Map.of(
                        "model", "model-a",
                        "chartVersion", 1,
                        "size", "youth-medium",
                        "second", "youth-large",
                        "outcome", "in-size",
                        "reason", "Near the edge")))));
    state(ada, "check-today");
    assertThat(reason(ada)).isEqualTo("The head was measured near the edge of its size");
    assertThat(told("recheck-due", ada)).hasSize(1);
  }

  private Envelope measured(Person person) {
    return peers.sizing(
        person.player(),
        "head-measured",
        Map.of(
            "player",
            person.player(),
            "readings",
            List.of(Map.of("entered", "555 mm", "mm", 555), Map.of("entered", "555 mm", "mm", 555)),
            "valueMm",
            555,
            "uncertaintyMm",
            3,
            "method",
            "mean-of-two",
            "confirmed",
            false,
            "by",
            "fitter.north",
            "at",
            Instant.now()));
  }

  @Test
  @DisplayName("in the order of risk on the fitter's day")
  void today() {
    Person lapsed = fitted("TODAY");
    Person overdue = fitted("TODAY");
    Person due = fitted("TODAY");
    Person soon = fitted("TODAY");
    Person well = fitted("TODAY");
    Person never = peers.arrives("TODAY");
    goesBy(lapsed, 11);
    goesBy(overdue, 9);
    goesBy(soon, 6);
    new Fitter("manager", "TODAY")
        .says("/api/hair-changes", Map.of("player", due.number(), "hair", "long"));
    List<String> order =
        as("manager")
            .get("/api/today")
            .jsonPath()
            .getList("players.findAll { it.field == 'TODAY' }.player", String.class);
    assertThat(order)
        .containsExactlyElementsOf(
            Stream.of(lapsed, overdue, due, never, soon)
                .map(person -> person.player().toString())
                .toList());
    assertThat(order).doesNotContain(well.player().toString());
    String page = as("manager").get("/today").asString();
    assertThat(page)
        .contains("Do not wear", "Overdue", "Due soon", "/fitting/players/" + soon.player());
    assertThat(as("coach.hawks").get("/api/today").statusCode()).isEqualTo(403);
  }

  @Test
  @DisplayName("by a plan that everybody can read, with its numbers")
  void plan() {
    String page = as("coach.hawks").get("/recheck-plan").asString();
    assertThat(page)
        .contains("A week gone by", "after 7 days", "after 10 days", "common practice, no source")
        .contains("5 % less or more room", "89.9 kPa");
  }
}
