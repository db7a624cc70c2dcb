package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.escalation.WhenNobodyConfirmsThenEscalate;
import org.tapeline.notify.unreached.WhenPeopleAreNotReachedThenTellStaff;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@QuarkusTestResource(TextGateway.class)
@Tag("servers")
@DisplayName("When a family does not confirm a notice")
class EscalationsTest {
  private static final String SATURDAY = "2035-09-15T15:00:00Z";
  private static final String FITTERS = "fitters.river@larkfield.example.org";
  private static final String MANAGER = "manager@larkfield.example.org";
  private static final Duration SOON = Duration.ofSeconds(30);

  /** Days ahead of the clock: each test tells staff later than the one before. */
  private static int day;

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject WhenNobodyConfirmsThenEscalate escalation;
  @Inject WhenPeopleAreNotReachedThenTellStaff staff;

  private final String phone = "+1500" + ThreadLocalRandom.current().nextInt(1_000_000, 9_999_999);
  private final String mail = "ana." + phone.substring(1) + "@families.example.org";
  private final String name = "Ana" + phone.substring(5);
  private Peers peers;
  private Instant later;

  /** Whatever other tests left open is told before. */
  @BeforeEach
  void open() {
    peers = new Peers(kafka);
    day++;
    later = Instant.now().plus(Duration.ofDays(day));
    escalation.look(later);
    staff.look(later.plus(Duration.ofHours(1)));
    later = later.plus(Duration.ofHours(2));
  }

  @AfterEach
  void close() {
    peers.close();
  }

  @Test
  @DisplayName("it goes by text message, then to the fitters, then to the manager, each once")
  void stepByStep() {
    Refit refit = notWear(new Family(name).guardian("en", mail, phone));
    String notice = onlyNotice(refit, "sent");
    after("PT14M");
    assertThat(TextGateway.to(phone)).isEmpty();
    after("PT16M");
    await().atMost(SOON).until(() -> !TextGateway.to(phone).isEmpty());
    await().atMost(SOON).until(() -> guardianStates(refit).equals(List.of("sent")));
    after("PT17M");
    after("PT61M");
    assertThat(person(fitter("river")).getList("tried.how"))
        .isEqualTo(List.of("mail", "second-channel", "text", "fitters"));
    after("PT241M");
    after("P1D");
    assertThat(person(manager()).getList("tried.how")).endsWith("fitters", "manager");
    assertThat(SmtpServer.to(mail)).hasSize(1);
    assertThat(TextGateway.to(phone)).hasSize(1);
    assertThat(notice).isEqualTo(person(manager()).getString("notices[0]"));

    staff.look(later);
    staff.look(later.plus(Duration.ofHours(1)));
    assertThat(toldOf(FITTERS)).singleElement().asString().startsWith("Not reached: 1 family, R");
    assertThat(toldOf(MANAGER)).containsExactly("Not reached: 1 family, all fields");
  }

  @Test
  @DisplayName("and reads it on the page behind the link, nothing more happens")
  void confirmed() {
    Refit refit = notWear(new Family(name).guardian("en", mail, phone));
    onlyNotice(refit, "sent");
    after("PT61M");
    String link = ReceivedMail.of(SmtpServer.to(mail).getFirst()).link();
    given().redirects().follow(false).post(link.substring(link.indexOf("/n/")) + "/read");
    assertThat(guardianStates(refit)).containsExactly("acknowledged");
    after("P2D");
    staff.look(later);
    assertThat(toldOf(MANAGER)).isEmpty();
    assertThat(toldOf(FITTERS)).isEmpty();
    assertThat(isListed(manager())).isFalse();
  }

  @Test
  @DisplayName("since no address is known, people are told at once, and one call ends it")
  void reachedByTelephone() {
    Family family = new Family(name).guardian("es", null, null);
    Refit refit = notWear(family);
    onlyNotice(refit, "undeliverable");
    JsonPath person = person(fitter("river"));
    assertThat(person.getList("whys")).isEqualTo(List.of("no-address"));
    assertThat(person.getList("children.firstName")).isEqualTo(List.of(name));
    assertThat(isListed(fitter("north"))).isFalse();
    after("PT0S");
    staff.look(later);
    assertThat(toldOf(FITTERS)).hasSize(1);

    String notice = person.getString("notices[0]");
    assertThat(reach(fitter("north"), family, notice, UuidV7.next()).statusCode()).isEqualTo(403);
    UUID command = UuidV7.next();
    for (int i = 0; i < 2; i++) {
      assertThat(reach(fitter("river"), family, notice, command).statusCode()).isEqualTo(200);
    }
    assertThat(guardianStates(refit)).containsExactly("acknowledged");
    after("P2D");
    assertThat(isListed(fitter("river"))).isFalse();
    staff.look(later.plus(Duration.ofHours(1)));
    assertThat(toldOf(MANAGER)).isEmpty();
  }

  @Test
  @DisplayName("and the case is closed, nobody has to be reached any more")
  void closed() {
    Refit refit = notWear(new Family(name).guardian("en", null, null));
    onlyNotice(refit, "undeliverable");
    publish(refit, refit.closed(3, "cancelled"));
    await().atMost(SOON).until(() -> !isListed(manager()));
    after("P2D");
    staff.look(later);
    assertThat(toldOf(MANAGER)).isEmpty();
  }

  @Test
  @DisplayName("many make one mail each to the fitters and the manager")
  void together() {
    for (int i = 0; i < 3; i++) {
      onlyNotice(notWear(new Family(name).guardian("en", null, null)), "undeliverable");
    }
    after("P1D");
    staff.look(later);
    staff.look(later.plusSeconds(60));
    assertThat(toldOf(FITTERS)).singleElement().asString().startsWith("Not reached: 3 families, R");
    assertThat(toldOf(MANAGER)).containsExactly("Not reached: 3 families, all fields");
    ReceivedMail mail = mailsOf(MANAGER).getFirst();
    assertThat(mail.plain())
        .contains("- " + name + ", LV-0001, U10 Hawks: do not wear; no address is known")
        .doesNotContain("Quintanar", "Guardian of");
    assertThat(mail.html()).contains("<li", name);
  }

  @Test
  @DisplayName("the page has a call with one tap and a button, and the file no formula")
  void page() {
    Family family = new Family("=" + name).guardian("en", "no address at all", phone);
    TextGateway.next(TextGateway.Answer.of(422));
    Refit refit = notWear(family);
    String notice = onlyNotice(refit, "undeliverable");
    String page = manager().get("/unreached").then().statusCode(200).extract().asString();
    assertThat(page).contains("href=\"tel:" + phone + "\"", "Reached by telephone", name);
    assertThat(manager().get("/unreached.csv").asString())
        .contains("'=" + name)
        .doesNotContain(",=" + name);
    assertThat(fitter("river").get("/unreached.csv").statusCode()).isEqualTo(403);
    manager()
        .formParam("commandId", UuidV7.next())
        .formParam("guardian", family.guardianId(0))
        .formParam("notice", notice)
        .formParam("way", "smoke")
        .post("/unreached/reached")
        .then()
        .statusCode(400);
    manager()
        .formParam("commandId", UuidV7.next())
        .formParam("guardian", family.guardianId(0))
        .formParam("notice", notice)
        .formParam("way", "sheet")
        .redirects()
        .follow(false)
        .post("/unreached/reached")
        .then()
        .statusCode(303)
        .header("Location", "/notify/unreached");
    assertThat(guardianStates(refit)).containsExactly("acknowledged");
  }

  @Test
  @DisplayName("a report that says nothing is refused with what it has to say")
  void emptyReport() {
    String answer =
        manager()
            .header("Idempotency-Key", UuidV7.next())
            .contentType("application/json")
            .post("/api/unreached/" + UuidV7.next() + "/reached")
            .then()
            .statusCode(400)
            .extract()
            .path("detail");
    assertThat(answer).contains("how the person was reached");
  }

  private void after(String time) {
    escalation.look(Instant.now().plus(Duration.parse(time)));
  }

  private static Response reach(
      RequestSpecification who, Family family, String notice, UUID command) {
    return who.header("Idempotency-Key", command)
        .contentType("application/json")
        .body(Map.of("notices", List.of(notice), "way", "telephone"))
        .post("/api/unreached/" + family.guardianId(0) + "/reached");
  }

  private JsonPath person(RequestSpecification who) {
    JsonPath people = who.get("/api/unreached").then().statusCode(200).extract().jsonPath();
    return JsonPath.from(people.prettify())
        .setRootPath("people.find { it.children.any { c -> c.firstName == '" + name + "' } }");
  }

  private boolean isListed(RequestSpecification who) {
    return who.get("/api/unreached").asString().contains(name);
  }

  private List<ReceivedMail> mailsOf(String address) {
    return SmtpServer.to(address).stream()
        .map(ReceivedMail::of)
        .filter(m -> m.subject().startsWith("Not reached") && m.plain().contains(name))
        .toList();
  }

  /** Subjects, once the mails that were raised have gone out. */
  private List<String> toldOf(String address) {
    await()
        .atMost(SOON)
        .until(
            () ->
                notices("/api/notices?state=raised")
                    .getList("notices.findAll { it.kind == 'not-reached' }")
                    .isEmpty());
    return mailsOf(address).stream().map(ReceivedMail::subject).toList();
  }

  private Refit notWear(Family family) {
    family.details().forEach(event -> peers.send(event, UuidV7.next()));
    Refit refit = new Refit(family.player, "RIVER");
    publish(refit, refit.opened(1), refit.booked(2, SATURDAY));
    return refit;
  }

  private void publish(Refit refit, Event... events) {
    peers.sendTwice(refit.correlationId, events);
  }

  private static String onlyNotice(Refit refit, String state) {
    await().atMost(SOON).until(() -> guardianStates(refit).equals(List.of(state)));
    return notices("/api/notices?refitCase=" + refit.id)
        .getString("notices.find { it.kind == 'do-not-wear-refit' }.notice");
  }

  private static List<String> guardianStates(Refit refit) {
    return notices("/api/notices?refitCase=" + refit.id)
        .getList("notices.findAll { it.kind == 'do-not-wear-refit' }.state");
  }

  private static JsonPath notices(String path) {
    return Manager.json(path);
  }

  private static RequestSpecification manager() {
    return given().auth().preemptive().basic("manager", "larkfield");
  }

  private static RequestSpecification fitter(String field) {
    return given().auth().preemptive().basic("fitter." + field, "larkfield");
  }
}
