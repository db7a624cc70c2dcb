package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("How and when a guardian is written to, with real servers")
class WishesTest {
  private static final String SATURDAY = "2035-09-15T15:00:00Z";
  private static final String SUNDAY = "2035-09-16T15:00:00Z";
  private static final Duration SOON = Duration.ofSeconds(30);
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private final String tag = UUID.randomUUID().toString().substring(0, 8);
  private final String rosa = "rosa." + tag + "@families.example.org";
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private static RequestSpecification manager() {
    return given().redirects().follow(false).auth().preemptive().basic("manager", "larkfield");
  }

  private Response save(RequestSpecification who, String path, String from, String to) {
    return who.formParam("commandId", UuidV7.next().toString())
        .formParam("first", "")
        .formParam("from", from)
        .formParam("to", to)
        .formParam("zone", ZONE.getId())
        .post(path);
  }

  @Test
  @DisplayName("in quiet hours only what says do not wear comes; the rest when they end")
  void quiet() {
    Family family = new Family("Mia").guardian("en", rosa);
    family.details().forEach(this::publish);
    String contact = "/contacts/" + family.guardianId(0);
    await().atMost(SOON).until(() -> manager().get(contact).statusCode() == 200);
    LocalTime now = LocalTime.now(ZONE).withSecond(0).withNano(0);
    save(manager(), contact, now.minusHours(1).toString(), now.plusHours(2).toString())
        .then()
        .statusCode(303);

    Refit soon = new Refit(family.player);
    publish(soon.opened(1, "soon"), soon.booked(2, SATURDAY));
    Refit stop = new Refit(family.player);
    publish(stop.opened(1), stop.booked(2, SATURDAY));
    await().atMost(SOON).until(() -> states(stop).equals(List.of("sent")));
    assertThat(subjects()).singleElement().asString().startsWith("Do not wear: Mia's");
    assertThat(states(soon)).containsExactly("raised");
    publish(soon.booked(3, SUNDAY));
    await().atMost(SOON).until(() -> states(soon).equals(List.of("raised", "cancelled")));

    save(manager(), contact, "", "").then().statusCode(303);
    await().atMost(SOON).until(() -> states(soon).contains("sent"));
    assertThat(subjects()).hasSize(2).last().asString().contains("Sunday, September 16");
  }

  @Test
  @DisplayName("a reminder that waits for the morning is taken back when the fit was checked")
  void reminderInTheNight() {
    Family family = new Family("Leo").guardian("en", rosa);
    family.details().forEach(this::publish);
    String contact = "/contacts/" + family.guardianId(0);
    await().atMost(SOON).until(() -> manager().get(contact).statusCode() == 200);
    LocalTime now = LocalTime.now(ZONE).withSecond(0).withNano(0);
    save(manager(), contact, now.minusHours(1).toString(), now.plusHours(2).toString());
    SignOff fit = new SignOff(family.player);
    Instant due = Instant.now().minusSeconds(60);
    publish(fit.recheckDue(1, due, Instant.parse("2035-09-16T05:00:00Z")));
    await().atMost(SOON).until(() -> statesTo(family).equals(List.of("raised")));
    publish(fit.signedOff(1, Instant.now()));
    await().atMost(SOON).until(() -> statesTo(family).equals(List.of("cancelled")));
    assertThat(subjects()).isEmpty();
  }

  private List<String> statesTo(Family family) {
    return manager()
        .get("/api/notices")
        .jsonPath()
        .getList("notices.findAll { it.recipient == '%s' }.state".formatted(family.guardianId(0)));
  }

  @Test
  @DisplayName("the guardian sets it by a link of the mail, turns news off and on, with proof")
  void ownLink() {
    Family family = new Family("Ana").guardian("es", rosa);
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publish(refit.opened(1), refit.booked(2, SATURDAY));
    await().atMost(SOON).until(() -> subjects().size() == 1);
    String mail = ReceivedMail.of(SmtpServer.to(rosa).getFirst()).plain();
    assertThat(mail).contains("Cuándo y cómo le escribimos:");
    String path = mail.substring(mail.indexOf("/c/")).lines().findFirst().orElseThrow().strip();

    String page = given().get(path).then().statusCode(200).extract().asString();
    assertThat(page).contains("Horas de silencio", "checked").doesNotContain(rosa, "Quintanar");
    String wrong = save(given(), path, "21:00", "").then().statusCode(400).extract().asString();
    assertThat(wrong).contains("Ponga las dos horas", "21:00");
    save(given().redirects().follow(false), path, "21:00", "07:00").then().statusCode(303);
    assertThat(given().get(path).asString()).contains("21:00", "07:00").doesNotContain("checked");

    String contact = "/contacts/" + family.guardianId(0);
    String staff = manager().get(contact).then().statusCode(200).extract().asString();
    assertThat(staff)
        .contains(
            "turned off", "News turned off by the link of notice", "quiet from 21:00 to 07:00");
    manager().formParam("x", "").post(contact + "/news").then().statusCode(303);
    assertThat(manager().get(contact).asString()).contains("News turned on again by the staff");

    String forged = path.substring(0, path.length() - 3) + "AAA";
    given().get(forged).then().statusCode(404);
    String parents = mail.substring(mail.indexOf("/n/")).lines().findFirst().orElseThrow().strip();
    given().get("/c/" + parents.substring(3)).then().statusCode(404);
    given().get("/n/" + path.substring(3)).then().statusCode(404);
  }

  @Test
  @DisplayName("the equipment manager finds people by name, address or player; nobody else does")
  void search() {
    Family family = new Family("Zed" + tag).guardian("en", rosa, "+13035550101");
    family.details().forEach(this::publish);
    await()
        .atMost(SOON)
        .until(() -> manager().get("/contacts?q=zed" + tag).asString().contains(rosa));
    assertThat(manager().get("/contacts?q=ROSA." + tag).asString())
        .contains("Guardian of Zed", "+13035550101", "U10-HAWKS");
    assertThat(manager().get("/contacts").asString()).doesNotContain(rosa);
    manager().get("/contacts/" + UuidV7.next()).then().statusCode(404);
    given()
        .auth()
        .preemptive()
        .basic("coach.hawks", "larkfield")
        .get("/contacts?q=zed")
        .then()
        .statusCode(403);
  }

  private List<String> subjects() {
    return SmtpServer.to(rosa).stream().map(m -> ReceivedMail.of(m).subject()).toList();
  }

  private static List<String> states(Refit refit) {
    return manager()
        .get("/api/notices?refitCase=" + refit.id)
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getList("notices.state");
  }

  private void publish(Event... events) {
    for (Event event : events) {
      peers.sendTwice(UuidV7.next(), event);
    }
  }
}
