package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.component.VEvent;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The calendar of the fit days")
class FitDayFeedTest {
  private static final String DAY = LocalDate.now().plusDays(8).toString();
  private static final Pattern LINK =
      Pattern.compile("https?://[^\"/]+/fitting(/calendar/[A-Za-z0-9_-]+/fit-days\\.ics)");

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private static VEvent entry(Response file, UUID day) throws Exception {
    assertThat(file.statusCode()).as(file.asString()).isEqualTo(200);
    assertThat(file.contentType()).isEqualToIgnoringCase("text/calendar; charset=UTF-8");
    return new CalendarBuilder()
        .build(new StringReader(file.asString())).<VEvent>getComponents("VEVENT").stream()
            .filter(e -> e.getUid().orElseThrow().getValue().contains(day.toString()))
            .findFirst()
            .orElseThrow();
  }

  private static String link(String user) {
    Matcher found = LINK.matcher(as(user).get("/fit-days").asString());
    assertThat(found.find()).isTrue();
    return found.group(1);
  }

  @Test
  @DisplayName("shows staff who is booked, and shows the link's holder no player at all")
  void booked() throws Exception {
    try (Peers peers = new Peers(kafka)) {
      Person person = peers.arrives("FEED");
      peers.send(
          peers.issued(person.tag(), person.player(), UUID.randomUUID()),
          peers.quarantined(person.tag(), person.player()));
      UUID refitCase = peers.refitOf(person.player());
      peers.send(peers.reserved(refitCase, person.player(), "FEED-R", "youth-medium"));
      Fitter fitter = new Fitter("manager", "FEED");
      UUID day = fitter.announces(DAY, "17:30", "18:00");
      peers.hears("refit-booked", person.player());

      VEvent staff = entry(as("manager").get("/fit-days.ics"), day);
      assertThat(staff.getSummary().getValue()).isEqualTo("Fit day at Field FEED");
      assertThat(staff.getDescription().getValue())
          .isEqualTo("1 booked, 1 free\n5:30 PM Ada Quillfeather");
      Response open = given().get(link("manager"));
      assertThat(open.asString()).doesNotContain("Ada", "Quillfeather", person.number());
      assertThat(open.header("Cache-Control")).contains("no-store");
      assertThat(entry(open, day).getDescription().getValue()).isEqualTo("1 booked, 1 free");
      assertThat(entry(open, day).getSequence().getSequenceNo()).isZero();

      changes(fitter, day);
    }
  }

  private static void changes(Fitter fitter, UUID day) throws Exception {
    fitter.moves(day, DAY, "18:30", "19:00");
    VEvent moved = entry(given().get(link("manager")), day);
    assertThat(moved.getSequence().getSequenceNo()).isEqualTo(1);
    fitter.cancels(day);
    VEvent cancelled = entry(given().get(link("manager")), day);
    assertThat(cancelled.getSequence().getSequenceNo()).isEqualTo(2);
    assertThat(cancelled.getStatus().getValue()).isEqualTo("CANCELLED");
    assertThat(entry(as("manager").get("/fit-days.ics"), day).getStatus().getValue())
        .isEqualTo("CANCELLED");
  }

  @Test
  @DisplayName(
      "shows each fitter the own fields only, and nothing to whoever guesses or is a coach")
  void scope() {
    try (Peers peers = new Peers(kafka)) {
      peers.send(peers.field("FEED-TWO"));
    }
    await()
        .atMost(PATIENCE)
        .until(() -> as("manager").get("/fit-days").asString().contains("FEED-TWO"));
    UUID day = new Fitter("manager", "FEED-TWO").announces(DAY, "17:30", "18:00");
    assertThat(given().get(link("manager")).asString()).contains(day.toString());
    String own = link("fitter.south");
    assertThat(given().get(own).asString())
        .contains("BEGIN:VCALENDAR")
        .doesNotContain(day.toString());
    assertThat(given().get(own.replace("/fit-days.ics", "A/fit-days.ics")).statusCode())
        .isEqualTo(404);
    assertThat(as("coach.hawks").get("/fit-days.ics").statusCode()).isEqualTo(403);
    assertThat(as("fitter.south").get("/fit-days.ics").asString()).doesNotContain(day.toString());
  }
}
