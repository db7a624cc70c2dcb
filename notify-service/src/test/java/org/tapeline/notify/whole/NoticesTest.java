package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.Temporal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.staff.WhenRestockHasWaitedThenTellDepot;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.Counts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Notices, with real servers")
class NoticesTest {
  private static final String SATURDAY = "2025-09-13T15:00:00Z";
  private static final String SUNDAY = "2025-09-14T16:30:00Z";
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject DataSource database;
  @Inject WhenRestockHasWaitedThenTellDepot depots;

  private final String tag = UUID.randomUUID().toString().substring(0, 8);
  private Peers peers;

  @BeforeEach
  void listPlaces() {
    peers = new Peers(kafka);
    publish(
        Event.of(
            "inventory.events",
            "org.tapeline.inventory.place-listed.v1",
            "place-NORTH",
            1,
            "NORTH",
            Map.of(
                "place",
                "NORTH",
                "name",
                "North Field",
                "kind",
                "field",
                "altitudeM",
                1609,
                "zone",
                "America/Denver",
                "travel",
                List.of())));
    await().atMost(SOON).until(() -> count("select count(*) from place") == 1);
  }

  @AfterEach
  void close() {
    SmtpServer.up();
    peers.close();
  }

  @Test
  @DisplayName("one mail for each guardian, in the guardian's language, with date and calendar")
  void oneMailEach() throws Exception {
    Family family =
        new Family("Mia").guardian("es", rosa()).guardian("en", tom()).guardian("en", null);
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));

    assertMailInSpanish(onlyMailTo(rosa()), refit);
    ReceivedMail english = onlyMailTo(tom());
    assertThat(english.subject())
        .isEqualTo("Do not wear: Mia's helmet. Re-fit on Saturday, September 13");
    assertThat(english.plain()).contains("9:00 AM to 9:20 AM, at North Field.");
    assertThat(english.html()).contains("lang=\"en\"", "North Field");
    assertThat(states(refit.id)).containsExactlyInAnyOrder("sent", "sent", "undeliverable");
    nobodyIsToldTwice(family);
    assertThat(count("select count(*) from journal where data::text ~* 'mia|quintanar|@'"))
        .isZero();
  }

  @Test
  @DisplayName("are the same when the booking comes before the opening, and the people last")
  void inAnotherOrder() throws Exception {
    Family family = new Family("Leo").guardian("es", rosa());
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.booked(2, SATURDAY), refit.opened(1));
    family.details().reversed().forEach(this::publish);

    assertThat(onlyMailTo(rosa()).subject()).contains("Leo", "sábado 13 de septiembre");
    assertThat(states(refit.id)).containsExactly("sent");
    nobodyIsToldTwice(family);
    assertThat(count("select count(*) from inbox_parked")).isZero();
  }

  @Test
  @DisplayName("do not wait for a late booking: first without, then a second one with the date")
  void lateBooking() {
    Family family = new Family("Ana").guardian("en", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1));
    ReceivedMail first = onlyMailTo(rosa());
    assertThat(first.subject()).isEqualTo("Do not wear: Ana's helmet");
    assertThat(first.hasCalendar()).isFalse();

    publishTwice(refit, refit.booked(2, SATURDAY));
    ReceivedMail second = mailsTo(rosa(), 2).get(1);
    assertThat(second.subject()).isEqualTo("Ana's re-fit is on Saturday, September 13");
    assertThat(second.hasCalendar()).isTrue();
  }

  @Test
  @DisplayName("say once that the date changed, and once that the helmet is fitted again")
  void changedThenFitted() {
    Family family = new Family("Kai").guardian("en", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));
    VEvent before = event(onlyMailTo(rosa()));

    publishTwice(refit, refit.booked(3, SUNDAY));
    ReceivedMail changed = mailsTo(rosa(), 2).get(1);
    assertThat(changed.subject()).startsWith("New date: Kai's re-fit is on Sunday, September 14");
    assertThat(event(changed).getUid()).isEqualTo(before.getUid());
    assertThat(event(changed).getSequence().getSequenceNo())
        .isGreaterThan(before.getSequence().getSequenceNo());

    publishTwice(refit, refit.closed(4, "fitted"));
    assertThat(mailsTo(rosa(), 3).get(2).subject()).isEqualTo("Kai's helmet has been fitted again");
    nobodyIsToldTwice(family);
    assertThat(states(refit.id)).containsExactly("sent", "sent", "sent");
  }

  @Test
  @DisplayName("say once that the date does not hold, and the next date when there is one, twice")
  void calledOffThenBookedAgain() {
    Family family = new Family("Uma").guardian("en", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));
    onlyMailTo(rosa());

    publishTwice(refit, refit.unbooked(3));
    ReceivedMail off = mailsTo(rosa(), 2).get(1);
    assertThat(off.subject()).isEqualTo("Called off: Uma's re-fit on Saturday, September 13");
    assertThat(off.plain()).contains("at North Field, is off.", "We are looking for a new day.");
    assertThat(off.calendar().getProperty(Property.METHOD).orElseThrow().getValue())
        .isEqualTo("CANCEL");
    VEvent booked = event(SmtpServer.to(rosa()).stream().map(ReceivedMail::of).toList().getFirst());
    assertThat(event(off).getUid()).isEqualTo(booked.getUid());
    assertThat(event(off).getSequence().getSequenceNo())
        .isGreaterThan(booked.getSequence().getSequenceNo());

    publishTwice(refit, refit.booked(4, SUNDAY));
    assertThat(mailsTo(rosa(), 3).get(2).subject())
        .isEqualTo("Uma's re-fit is on Sunday, September 14");
    publishTwice(refit, refit.unbooked(5));
    mailsTo(rosa(), 4);
    publishTwice(refit, refit.booked(6, SATURDAY));
    assertThat(mailsTo(rosa(), 5).get(4).subject())
        .isEqualTo("Uma's re-fit is on Saturday, September 13");
    nobodyIsToldTwice(family);
  }

  @Test
  @DisplayName("are not raised for a case that was closed before anybody was told")
  void closedFirst() {
    Family family = new Family("Ivo").guardian("en", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.closed(2, "fitted"), refit.booked(3, SATURDAY));
    nobodyIsToldTwice(family);
    assertThat(states(refit.id)).isEmpty();
  }

  @Test
  @DisplayName("outlive an outage of the mail server and arrive once")
  void mailServerDown() {
    SmtpServer.down();
    Family family = new Family("Noa").guardian("en", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));
    await().atMost(SOON).until(() -> attempts(refit.id) >= 2);
    assertThat(states(refit.id)).containsExactly("raised");

    SmtpServer.up();
    ReceivedMail mail = onlyMailTo(rosa());
    await().atMost(SOON).until(() -> states(refit.id).equals(List.of("sent")));
    String id = notices(refit.id).getString("notices[0].notice");
    assertThat(mail.messageId()).isEqualTo("<notice." + id + "@larkfield.example.org>");
    JsonPath whole = Manager.json("/api/notices/" + id);
    assertThat(whole.getString("tries[0].outcome")).isEqualTo("failed");
    assertThat(whole.getString("tries[0].code")).isEqualTo("connect-failed");
    assertThat(whole.getList("tries.outcome")).endsWith("taken");
    String page =
        given()
            .auth()
            .preemptive()
            .basic("manager", "larkfield")
            .get("/notices/" + id)
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertThat(page)
        .contains("Guardian of Noa", "connect-failed", "/chains/" + refit.correlationId);
    nobodyIsToldTwice(family);
  }

  @Test
  @DisplayName("lose their text, and the address, when a person is erased")
  void erased() throws Exception {
    Family family = new Family("Eva").guardian("en", rosa()).guardian("es", tom());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));
    String link = onlyMailTo(rosa()).link();
    onlyMailTo(tom());

    publish(family.guardianTombstone(0));
    await().atMost(SOON).until(() -> texts(refit) == 1);
    assertThat(count("select count(*) from guardian where email = '" + rosa() + "'")).isZero();
    given().get(link.substring(link.indexOf("/n/"))).then().statusCode(404);
    publish(family.playerTombstone());
    await().atMost(SOON).until(() -> texts(refit) == 0);
    assertThat(count("select count(*) from player where given_name = 'Eva'")).isZero();
    assertThat(states(refit.id)).hasSize(2);
  }

  @Test
  @DisplayName("are given up when the person is erased before they could be sent")
  void erasedBeforeSent() {
    SmtpServer.down();
    Family family = new Family("Gus").guardian("en", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));
    // On a slow machine the first notice may have been taken back for one with the date.
    await().atMost(SOON).until(() -> states(refit.id).contains("raised"));
    publish(family.guardianTombstone(0));
    await()
        .atMost(SOON)
        .until(
            () ->
                states(refit.id).contains("undeliverable") && !states(refit.id).contains("raised"));
    SmtpServer.up();
    assertThat(notices(refit.id).getList("notices.why")).contains("erased");
    assertThat(SmtpServer.to(rosa())).isEmpty();
  }

  @Test
  @DisplayName("open a page of their own, without log-in, where reading can be confirmed")
  void parentsPage() {
    Family family = new Family("Zoe").guardian("es", rosa());
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publishTwice(refit, refit.opened(1), refit.booked(2, SATURDAY));
    String link = onlyMailTo(rosa()).link();
    String path = link.substring(link.indexOf("/n/"));

    String page = given().get(path).then().statusCode(200).extract().asString();
    assertThat(page).contains("lang=\"es\"", "No use este casco", "Sábado 13 de septiembre");
    assertThat(page).doesNotContain("Quintanar", rosa());
    String file = given().get(path + "/refit.ics").then().statusCode(200).extract().asString();
    assertThat(file).contains("BEGIN:VEVENT");
    for (int i = 0; i < 2; i++) {
      given()
          .redirects()
          .follow(false)
          .formParam("commandId", UuidV7.next().toString())
          .post(path + "/read")
          .then()
          .statusCode(303);
    }
    assertThat(states(refit.id)).containsExactly("acknowledged");
    assertThat(given().get(path).asString()).contains("Sabemos que ya lo leyó");

    String forged = path.substring(0, path.length() - 2) + (path.endsWith("AA") ? "BB" : "AA");
    String dead = given().get(forged).then().statusCode(404).extract().asString();
    assertThat(dead).contains("This link does not work").doesNotContain("Zoe", "casco de");
    given().post(forged + "/read").then().statusCode(404);
    given().get(forged + "/refit.ics").then().statusCode(404);
  }

  @Test
  @DisplayName("are told to the depot once for a restock request, and once for another amount")
  void depot() {
    Restock restock = new Restock("RIVER", SATURDAY);
    Event first = restock.requested(1, 2);
    publish(first);
    publish(first);
    publish(restock.requested(2, 2));
    String asked = "Restock: 2 x jaw pad 15mm for North Field";
    await().atMost(SOON).until(this::toldToTheDepot, List.of(asked)::equals);
    publish(restock.requested(3, 5));
    String changed = "Changed: now 5 x jaw pad 15mm for North Field";
    await().atMost(SOON).until(this::toldToTheDepot, List.of(asked, changed)::equals);
  }

  /** Once what waits has waited long enough. */
  private List<String> toldToTheDepot() {
    depots.look(Instant.now().plus(Duration.ofHours(1)));
    return SmtpServer.to("depot@larkfield.example.org").stream()
        .map(m -> ReceivedMail.of(m).subject())
        .filter(subject -> !subject.startsWith("Restock, "))
        .toList();
  }

  @Test
  @DisplayName("are shown to the equipment manager only")
  void whoMayWhat() {
    given().get("/api/notices").then().statusCode(401).contentType("application/problem+json");
    given().redirects().follow(false).get("/notices").then().statusCode(302);
    given()
        .auth()
        .preemptive()
        .basic("coach.hawks", "larkfield")
        .get("/api/notices")
        .then()
        .statusCode(403);
    JsonPath wrong =
        given()
            .auth()
            .preemptive()
            .basic("manager", "larkfield")
            .get("/api/notices?state=lost")
            .then()
            .statusCode(400)
            .contentType("application/problem+json")
            .extract()
            .jsonPath();
    assertThat(wrong.getString("detail")).contains("raised, sent, undeliverable");
    String page =
        given()
            .auth()
            .preemptive()
            .basic("manager", "larkfield")
            .get("/notices?state=sent")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertThat(page).contains("<h1>Notices</h1>");
    given()
        .auth()
        .preemptive()
        .basic("manager", "larkfield")
        .get("/notices/" + UuidV7.next())
        .then()
        .statusCode(404)
        .contentType("text/html");
  }

  private void assertMailInSpanish(ReceivedMail mail, Refit refit) {
    assertThat(mail.language()).isEqualTo("es");
    assertThat(mail.subject())
        .isEqualTo("No usar: el casco de Mia. Nuevo ajuste el sábado 13 de septiembre");
    assertThat(mail.plain()).contains("de 9:00 a. m. a 9:20 a. m., en North Field.");
    VEvent event = event(mail);
    assertThat(event.getUid().orElseThrow().getValue())
        .isEqualTo("refit-" + refit.id + "@larkfield.example.org");
    assertThat(Instant.from(event.<Temporal>getDateTimeStart().getDate()))
        .isEqualTo(Instant.parse(SATURDAY));
    assertThat(event.getDateTimeStamp()).isNotNull();
    assertThat(mail.calendar().getProperty(Property.METHOD).orElseThrow().getValue())
        .isEqualTo("PUBLISH");
  }

  private static VEvent event(ReceivedMail mail) {
    return (VEvent) mail.calendar().getComponent("VEVENT").orElseThrow();
  }

  /** Another case of the same player, told last, shows that nothing more came before it. */
  private void nobodyIsToldTwice(Family family) {
    Refit marker = new Refit(family.player);
    int before = SmtpServer.to(rosa()).size();
    publishTwice(marker, marker.opened(1), marker.booked(2, SUNDAY));
    await().atMost(SOON).until(() -> states(marker.id).contains("sent"));
    await().atMost(SOON).until(() -> SmtpServer.to(rosa()).size() == before + 1);
  }

  private ReceivedMail onlyMailTo(String address) {
    return mailsTo(address, 1).getFirst();
  }

  private List<ReceivedMail> mailsTo(String address, int expected) {
    await().atMost(SOON).until(() -> SmtpServer.to(address).size() >= expected);
    List<ReceivedMail> mails = SmtpServer.to(address).stream().map(ReceivedMail::of).toList();
    assertThat(mails).hasSize(expected);
    return mails;
  }

  private List<String> states(UUID refitCase) {
    return notices(refitCase).getList("notices.state");
  }

  private static int attempts(UUID refitCase) {
    return notices(refitCase).<Integer>getList("notices.attempts").stream()
        .mapToInt(Integer::intValue)
        .sum();
  }

  private static JsonPath notices(UUID refitCase) {
    return Manager.json("/api/notices?refitCase=" + refitCase);
  }

  private void publish(Event event) {
    peers.send(event, UuidV7.next());
  }

  private void publishTwice(Refit refit, Event... events) {
    peers.sendTwice(refit.correlationId, events);
  }

  private long texts(Refit refit) {
    return count(
        "select count(*) from notice_text join notice using (notice) where refit_case = '"
            + refit.id
            + "'");
  }

  private long count(String sql) {
    return new Counts(database).of(sql);
  }

  private String rosa() {
    return "rosa." + tag + "@families.example.org";
  }

  private String tom() {
    return "tom." + tag + "@families.example.org";
  }
}
