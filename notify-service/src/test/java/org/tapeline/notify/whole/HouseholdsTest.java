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
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.Counts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("What a household is told, with real servers")
class HouseholdsTest {
  private static final String SATURDAY = "2035-09-15T15:00:00Z";
  private static final String LATER_ON_SATURDAY = "2035-09-15T15:20:00Z";
  private static final Duration SOON = Duration.ofSeconds(30);
  private static final Instant NOW = Instant.now();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject DataSource database;

  private final String rosa =
      "rosa." + UUID.randomUUID().toString().substring(0, 8) + "@families.example.org";
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    SmtpServer.up();
    peers.close();
  }

  @Test
  @DisplayName("is one notice for brother and sister, with both dates, and corrections apart")
  void oneForBoth() {
    Siblings family = new Siblings("es", rosa, "Mia", "Ivo");
    Refit mia = new Refit(family.player("Mia"));
    Refit ivo = new Refit(family.player("Ivo"));
    publish(mia.opened(1), mia.booked(2, SATURDAY), ivo.opened(1));
    publish(ivo.booked(2, LATER_ON_SATURDAY));
    bothAreKnown(mia, ivo);
    family.details().forEach(this::publish);

    ReceivedMail mail = mails(1).getFirst();
    assertThat(mail.subject()).isEqualTo("No usar: los cascos de Mia e Ivo");
    assertThat(mail.plain())
        .containsOnlyOnce("ábado 15 de septiembre")
        .contains(": Mia 9:00 a. m., Ivo 9:20 a. m., en ");
    assertThat(mail.calendar().getComponents("VEVENT")).hasSize(2);
    JsonPath notices = notices(mia);
    assertThat(notices.getList("notices.notice"))
        .hasSize(1)
        .isEqualTo(notices(ivo).getList("notices.notice"));
    assertThat(notices.getList("notices[0].players")).hasSize(2);

    publish(ivo.closed(3, "fitted"));
    assertThat(mails(2).get(1).subject()).isEqualTo("El casco de Ivo está ajustado otra vez");
    publish(mia.booked(3, "2035-09-16T15:00:00Z"));
    assertThat(mails(3).get(2).subject()).startsWith("Nueva fecha: el ajuste de Mia");
  }

  @Test
  @DisplayName("of a brother who was fitted before it went out is left out, the sister is told")
  void brotherFitted() {
    SmtpServer.down();
    Siblings family = new Siblings("en", rosa, "Mia", "Leo");
    Refit mia = new Refit(family.player("Mia"));
    Refit leo = new Refit(family.player("Leo"));
    publish(mia.opened(1), leo.opened(1), mia.booked(2, SATURDAY), leo.booked(2, SATURDAY));
    bothAreKnown(mia, leo);
    family.details().forEach(this::publish);
    await()
        .atMost(SOON)
        .until(() -> states(mia).contains("raised") && states(leo).contains("raised"));
    publish(leo.closed(3, "fitted"));
    await()
        .atMost(SOON)
        .until(
            () ->
                count(
                        "select count(*) from refit_case where outcome = "
                            + "'fitted' and refit_case = '"
                            + leo.id
                            + "'")
                    == 1);
    SmtpServer.up();
    await()
        .atMost(SOON)
        .until(() -> subjects().stream().anyMatch(s -> s.startsWith("Do not wear: Mia's")));
    assertThat(subjects()).noneMatch(s -> s.contains("Do not wear") && s.contains("Leo"));
  }

  @Test
  @DisplayName("leaves out a brother who was erased before it went out, and still tells the sister")
  void brotherErased() {
    SmtpServer.down();
    Siblings family = new Siblings("en", rosa, "Mia", "Leo");
    Refit mia = new Refit(family.player("Mia"));
    Refit leo = new Refit(family.player("Leo"));
    publish(mia.opened(1), leo.opened(1), mia.booked(2, SATURDAY), leo.booked(2, SATURDAY));
    bothAreKnown(mia, leo);
    family.details().forEach(this::publish);
    await()
        .atMost(SOON)
        .until(() -> states(mia).contains("raised") && states(leo).contains("raised"));
    publish(family.tombstone("Leo"));
    String known = "select count(*) from player where player = '" + family.player("Leo") + "'";
    await().atMost(SOON).until(() -> count(known) == 0);
    SmtpServer.up();
    await()
        .atMost(SOON)
        .until(() -> subjects().stream().anyMatch(s -> s.startsWith("Do not wear: Mia's")));
    assertThat(SmtpServer.to(rosa)).noneMatch(m -> ReceivedMail.of(m).plain().contains("Leo"));
  }

  @Test
  @DisplayName("is a reminder of a fit check, none once it was done, and a stop when it was missed")
  void recheck() {
    Siblings family = new Siblings("en", rosa, "Mia");
    family.details().forEach(this::publish);
    SignOff fit = new SignOff(family.player("Mia"));
    Instant due = NOW.minusSeconds(60);
    Instant lapses = Instant.parse("2035-09-16T05:00:00Z");
    publish(fit.signedOff(1, NOW.minus(Duration.ofDays(7))), fit.recheckDue(1, due, lapses));
    ReceivedMail reminder = mails(1).getFirst();
    assertThat(reminder.subject()).isEqualTo("A fit check is due: Mia");
    assertThat(reminder.plain()).contains("By Friday, September 14: Mia.");

    publish(fit.signedOff(2, NOW), fit.recheckDue(2, NOW.minusSeconds(30), lapses));
    publish(fit.lapsed(3, NOW.plusSeconds(1)));
    assertThat(mails(2).get(1).subject()).isEqualTo("Do not wear: fit check needed for Mia");
    publish(fit.signedOff(4, NOW.plusSeconds(2)));
    assertThat(mails(3).get(2).subject()).isEqualTo("Mia's helmet has been fitted again");
  }

  @Test
  @DisplayName("is one notice of each cause, however often and in whatever order it comes")
  void threeTimesInAnyOrder() {
    for (long seed = 1; seed <= 3; seed++) {
      Siblings family = new Siblings("en", seed + "." + rosa, "Mia", "Leo", "Ana", "Zoe");
      List<Event> shuffled = new ArrayList<>();
      for (int times = 0; times < 3; times++) {
        shuffled.addAll(family.details());
      }
      List<Event> causes = causes(family);
      for (int times = 0; times < 3; times++) {
        shuffled.addAll(causes);
      }
      Collections.shuffle(shuffled, new Random(seed));
      shuffled.forEach(this::publish);
      String sent =
          " from notice n where n.state = 'sent' and n.recipient = '" + family.guardian + "'";
      // On a slow machine the date may come as a notice of its own.
      String kinds = "select count(distinct n.kind)" + sent + " and n.kind <> 'refit-date'";
      await().atMost(SOON).until(() -> count(kinds) == 4);
      assertThat(count("select count(*)" + sent + " and n.kind <> 'refit-date'")).isEqualTo(4);
      String twice =
          "select count(*) from (select c.event"
              + sent.replace("where", "join notice_cause c using (notice) where")
              + " group by c.event having count(*) > 1) t";
      assertThat(count(twice)).isZero();
      assertThat(SmtpServer.to(seed + "." + rosa).size()).isBetween(4, 6);
    }
    await().atMost(SOON).until(() -> count("select count(*) from inbox_parked") == 0);
  }

  private static List<Event> causes(Siblings family) {
    Refit mia = new Refit(family.player("Mia"));
    Refit leo = new Refit(family.player("Leo"));
    SignOff zoe = new SignOff(family.player("Zoe"));
    return List.of(
        mia.opened(1),
        mia.booked(2, SATURDAY),
        leo.opened(1, "soon"),
        leo.booked(2, SATURDAY),
        new SignOff(family.player("Ana")).recheckDue(1, NOW, Instant.parse("2035-09-16T05:00:00Z")),
        zoe.signedOff(1, NOW.minus(Duration.ofDays(10))),
        zoe.lapsed(2, NOW));
  }

  @Test
  @DisplayName("stands in a table that the equipment manager can read")
  void table() {
    String page = Manager.page("/causes");
    assertThat(page).contains("Causes of notices", "recheck-due", "30 min", "its own date");
    given()
        .auth()
        .preemptive()
        .basic("coach.hawks", "larkfield")
        .get("/causes")
        .then()
        .statusCode(403);
  }

  /** The people come last: then what is ready does not hang on how fast the machine is. */
  private void bothAreKnown(Refit one, Refit other) {
    String booked =
        "select count(*) from refit_case where opened_event is not null and starts_at is not null"
            + " and refit_case in ('%s', '%s')".formatted(one.id, other.id);
    await().atMost(SOON).until(() -> count(booked) == 2);
  }

  private List<String> subjects() {
    return SmtpServer.to(rosa).stream().map(m -> ReceivedMail.of(m).subject()).toList();
  }

  private List<ReceivedMail> mails(int expected) {
    await().atMost(SOON).until(() -> SmtpServer.to(rosa).size() >= expected);
    List<ReceivedMail> mails = SmtpServer.to(rosa).stream().map(ReceivedMail::of).toList();
    assertThat(mails).hasSize(expected);
    return mails;
  }

  private static List<String> states(Refit refit) {
    return notices(refit).getList("notices.state");
  }

  private static JsonPath notices(Refit refit) {
    return Manager.json("/api/notices?refitCase=" + refit.id);
  }

  private void publish(Event... events) {
    for (Event event : events) {
      peers.sendTwice(UuidV7.next(), event);
    }
  }

  private long count(String sql) {
    return new Counts(database).of(sql);
  }
}
