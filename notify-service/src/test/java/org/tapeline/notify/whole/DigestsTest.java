package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.digest.WhenTheHourComesThenTellStaff;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.Counts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("The staff's day, with real servers")
class DigestsTest {
  private static final String DEPOT = "main@larkfield.example.org";
  private static final String FITTERS = "fitters.river@larkfield.example.org";
  private static final String MANAGER = "manager@larkfield.example.org";
  private static final Duration SOON = Duration.ofSeconds(30);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject WhenTheHourComesThenTellStaff day;
  @Inject DataSource database;

  private final String name = "Noa" + UuidV7.next().toString().substring(24);
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  @Test
  @DisplayName(
      "of a depot tells once a morning what is late, new and to be picked, in its language")
  void depot() {
    Restock restock = new Restock("MAIN", "2036-05-02T15:00:00Z");
    publishTwice(restock.requested(1, 3));
    await().atMost(SOON).until(() -> count("select count(*) from restock_open") >= 1);
    day.look(Instant.parse("2036-05-01T12:29:00Z"));
    day.look(Instant.parse("2036-05-01T12:31:00Z"));
    day.look(Instant.parse("2036-05-01T20:00:00Z"));
    assertThat(mails(DEPOT, "Reposición, ")).hasSize(1);
    ReceivedMail first = mails(DEPOT, "Reposición, ").getFirst();
    assertThat(first.subject()).isEqualTo("Reposición, jueves 1 de mayo: 1 abiertos");
    assertThat(first.plain())
        .contains("Por preparar", "- 3 x jaw pad 15mm", "/inventory/restock")
        .doesNotContain("Atrasado");

    publishTwice(restock.picked(2, 3));
    await()
        .atMost(SOON)
        .until(() -> count("select count(*) from restock_open where state = 'picked'") == 1);
    day.look(Instant.parse("2036-05-03T13:00:00Z"));
    assertThat(mails(DEPOT, "Reposición, sábado").getFirst().plain())
        .contains("Atrasado", "- 3 x jaw pad 15mm para NORTH, para el viernes 2 de mayo")
        .doesNotContain("Por preparar");

    publishTwice(restock.cancelled(3));
    await().atMost(SOON).until(() -> open(restock.request) == 0);
    day.look(Instant.parse("2036-05-04T13:00:00Z"));
    assertThat(mails(DEPOT, "Reposición, ")).hasSize(2);
    assertThat(count("select count(*) from digest where recipient = 'depot.MAIN'")).isEqualTo(3);
  }

  @Test
  @DisplayName("of a field says who comes when and who must not wear, on the clock's odd days too")
  void field() {
    Family booked = new Family(name).guardian("en", null);
    Family waits = new Family(name + "b").guardian("en", null);
    List.of(booked, waits).forEach(f -> f.details().forEach(e -> peers.send(e, UuidV7.next())));
    Refit today = new Refit(booked.player, "RIVER");
    publish(today, today.opened(1), today.booked(2, "2036-03-09T17:00:00Z"));
    Refit other = new Refit(waits.player, "RIVER");
    publish(other, other.opened(1));
    await()
        .atMost(SOON)
        .until(
            () ->
                count(
                        "select count(*) from refit_case where refit_case in ('%s', '%s')"
                                .formatted(today.id, other.id)
                            + " and opened_event is not null and (starts_at is not null or"
                            + " refit_case = '"
                            + other.id
                            + "')")
                    == 2);
    // The clock goes forward that night: half past six is an hour earlier by the sun.
    day.look(Instant.parse("2036-03-09T12:29:00Z"));
    assertThat(mails(FITTERS, "RIVER, Sunday, March 9")).isEmpty();
    day.look(Instant.parse("2036-03-09T12:30:00Z"));
    day.look(Instant.parse("2036-03-09T13:30:00Z"));
    ReceivedMail mail = only(mails(FITTERS, "RIVER, Sunday, March 9"));
    assertThat(mail.plain())
        .contains("Booked today")
        .contains("- 11:00 AM " + name + ", LV-0001, U10 Hawks: do not wear")
        .contains("- " + name + "b, LV-0001, U10 Hawks: do not wear, no date yet")
        .doesNotContain("Quintanar");
    assertThat(only(mails(MANAGER, "Helmets, Sunday, March 9")).plain())
        .contains("Cases that wait too long");

    peers.send(booked.playerTombstone(), UuidV7.next());
    await()
        .atMost(SOON)
        .until(
            () ->
                count("select count(*) from notice_text where plain like '%" + name + ", LV%'")
                    == 0);
    await()
        .atMost(SOON)
        .untilAsserted(() -> assertThat(unreached()).contains(waits.guardianId(0).toString()));
    assertThat(unreached()).doesNotContain(booked.guardianId(0).toString());
  }

  private static String unreached() {
    return given()
        .auth()
        .preemptive()
        .basic("manager", "larkfield")
        .get("/api/unreached")
        .asString();
  }

  private void publishTwice(Event event) {
    peers.send(event, UuidV7.next()).send(event, UuidV7.next());
  }

  private void publish(Refit refit, Event... events) {
    peers.sendTwice(refit.correlationId, events);
  }

  private static ReceivedMail only(List<ReceivedMail> mails) {
    assertThat(mails).hasSize(1);
    return mails.getFirst();
  }

  /** Once what was raised has gone out. */
  private static List<ReceivedMail> mails(String address, String subject) {
    await()
        .atMost(SOON)
        .until(
            () ->
                given()
                    .auth()
                    .preemptive()
                    .basic("manager", "larkfield")
                    .get("/api/notices?state=raised")
                    .jsonPath()
                    .getList("notices.findAll { it.kind.endsWith('-day') }")
                    .isEmpty());
    return SmtpServer.to(address).stream()
        .map(ReceivedMail::of)
        .filter(m -> m.subject().startsWith(subject))
        .toList();
  }

  private long open(UUID request) {
    return count("select count(*) from restock_open where request = '" + request + "'");
  }

  private long count(String sql) {
    return new Counts(database).of(sql);
  }
}
