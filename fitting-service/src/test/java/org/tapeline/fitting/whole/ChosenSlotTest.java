package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.component.VEvent;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.token.SlotLinks;
import org.tapeline.journal.token.TimedTokens;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A guardian who chooses another slot")
class ChosenSlotTest {
  private static final String DAY = LocalDate.now().plusDays(4).toString();
  private static final String DAY_AFTER = LocalDate.now().plusDays(9).toString();
  private static final byte[] KEY =
      "a-key-for-tests-that-is-32-characters-or-more".getBytes(StandardCharsets.UTF_8);
  private static final SlotLinks LINKS = new SlotLinks(KEY);
  private static final Pattern RADIO = Pattern.compile("name=\"slot\" value=\"([^\"]+)\"");

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  /** A family with a re-fit, and what its link opens. */
  private record Household(Person person, UUID refitCase, UUID notice, String path) {

    static Household of(Person person, UUID refitCase, String language) {
      UUID notice = UuidV7.next();
      String token =
          LINKS.seal(
              new SlotLinks.Slot(refitCase, notice, language), Instant.now().plusSeconds(600));
      return new Household(person, refitCase, notice, "/slot/" + token);
    }

    Response looks() {
      return given().get(path);
    }

    List<String> offered() {
      return all(RADIO, looks().asString());
    }

    String had() {
      return all(Pattern.compile("name=\"had\" value=\"([^\"]*)\""), looks().asString()).getFirst();
    }

    Response takes(String slot) {
      return takes(UUID.randomUUID(), had(), slot);
    }

    Response takes(UUID commandId, String had, String slot) {
      return given()
          .redirects()
          .follow(false)
          .formParam("commandId", commandId)
          .formParam("had", had)
          .formParam("slot", slot)
          .post(path);
    }
  }

  private static List<String> all(Pattern pattern, String page) {
    List<String> found = new ArrayList<>();
    Matcher matcher = pattern.matcher(page);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  /** A player at that field whose helmet is out of use and whose replacement is there. */
  private Household waitsAt(String field, String language) {
    Person person = peers.arrives(field);
    peers.send(
        peers.issued(person.tag(), person.player(), UUID.randomUUID()),
        peers.quarantined(person.tag(), person.player()));
    UUID refitCase = peers.refitOf(person.player());
    peers.send(peers.reserved(refitCase, person.player(), person.tag() + "R", "youth-medium"));
    await().atMost(PATIENCE).until(() -> refit(refitCase).getString("needs[0].arrivesAt") != null);
    return Household.of(person, refitCase, language);
  }

  private static JsonPath refit(UUID refitCase) {
    return new JsonPath(as("manager").get("/api/refits").asString())
        .setRootPath("find { it.refitCase == '" + refitCase + "' }");
  }

  @Test
  @DisplayName("sees free slots only, takes one, and gets the new date with a calendar file")
  void chooses() throws Exception {
    Household family = waitsAt("CHOOSE", "en");
    Fitter fitter = new Fitter("manager", "CHOOSE");
    fitter.announces(DAY, "17:30", "18:15");
    String first = family.had();
    assertThat(family.offered()).hasSize(2).doesNotContain(first);
    String page = family.looks().asString();
    assertThat(page)
        .contains(
            "Choose another time for Ada", "At Field CHOOSE, your field", "5:45 PM", "6:00 PM")
        .contains("may not wear the helmet")
        .doesNotContain("Quillfeather", family.person().number(), "<script");

    String wanted = family.offered().getLast();
    Response taken = family.takes(wanted);
    assertThat(taken.statusCode()).as(taken.asString()).isEqualTo(303);
    assertThat(taken.header("Location")).isEqualTo("/fitting" + family.path() + "?done=1");
    assertThat(given().get(family.path() + "?done=1").asString())
        .contains("Done. This is your time now.", "6:00 PM to 6:15 PM, at Field CHOOSE");
    assertThat(family.had()).isEqualTo(wanted);
    assertThat(family.offered()).hasSize(2).contains(first);

    JsonNode booked =
        peers.heardOf(family.person().player()).stream()
            .filter(m -> m.type().contains(".refit-booked."))
            .toList()
            .getLast()
            .data();
    assertThat(booked.path("startsAt").asText())
        .isEqualTo(refit(family.refitCase()).getString("booking.startsAt"));
    assertThat(booked.path("chosenWith").asText()).isEqualTo(family.notice().toString());
    VEvent entry = entry(given().get(family.path() + "/refit.ics"));
    assertThat(entry.getUid().orElseThrow().getValue())
        .isEqualTo("refit-" + family.refitCase() + "@larkfield.example.org");
    assertThat(entry.getSequence().getSequenceNo()).isEqualTo(3);
    assertThat(entry.getSummary().getValue()).isEqualTo("Helmet re-fit: Ada");
  }

  private static VEvent entry(Response file) throws Exception {
    assertThat(file.contentType()).startsWith("text/calendar");
    return new CalendarBuilder()
        .build(new StringReader(file.asString()))
        .<VEvent>getComponents("VEVENT")
        .getFirst();
  }

  @Test
  @DisplayName("pressing twice does it once, and going back to choose otherwise is told plainly")
  void twice() {
    Household family = waitsAt("TWICE", "es");
    new Fitter("manager", "TWICE").announces(DAY, "17:30", "18:15");
    String had = family.had();
    List<String> offered = family.offered();
    UUID id = UUID.randomUUID();
    assertThat(family.takes(id, had, offered.get(0)).statusCode()).isEqualTo(303);
    assertThat(family.takes(id, had, offered.get(0)).statusCode()).isEqualTo(303);
    Response back = family.takes(id, had, offered.get(1));
    assertThat(back.statusCode()).isEqualTo(409);
    assertThat(back.asString())
        .contains("Su hora cambió", "Elija otra hora para Ada", "5:45 p. m.");
    assertThat(family.had()).isEqualTo(offered.get(0));
    Response nothing = family.takes(UUID.randomUUID(), offered.get(0), "");
    assertThat(nothing.statusCode()).isEqualTo(400);
    assertThat(nothing.asString()).contains("Primero elija una hora");
    assertThat(family.takes(UUID.randomUUID(), family.had(), "made-up").statusCode())
        .isEqualTo(400);
    assertThat(family.takes(UUID.randomUUID() + "_1").statusCode()).isEqualTo(409);
  }

  @Test
  @DisplayName("and another one want the last slot at once: one gets it, the other is told so")
  void together() throws Exception {
    List<Household> families = List.of(waitsAt("RACE", "en"), waitsAt("RACE", "en"));
    Fitter fitter = new Fitter("manager", "RACE");
    fitter.announces(DAY, "17:30", "18:00");
    fitter.announces(DAY_AFTER, "17:30", "17:45");
    String last = families.getFirst().offered().getFirst();
    assertThat(families.getLast().offered()).containsExactly(last);
    CyclicBarrier together = new CyclicBarrier(families.size());
    List<Response> answers = new ArrayList<>();
    try (ExecutorService threads = Executors.newFixedThreadPool(families.size())) {
      List<Future<Response>> all = new ArrayList<>();
      for (Household family : families) {
        String had = family.had();
        all.add(
            threads.submit(
                () -> {
                  together.await(30, TimeUnit.SECONDS);
                  return family.takes(UUID.randomUUID(), had, last);
                }));
      }
      for (Future<Response> one : all) {
        answers.add(one.get(30, TimeUnit.SECONDS));
      }
    }
    assertThat(answers.stream().map(Response::statusCode)).containsExactlyInAnyOrder(303, 409);
    Response loser = answers.stream().filter(a -> a.statusCode() == 409).findFirst().orElseThrow();
    assertThat(loser.asString()).contains("that time was just taken", "name=\"slot\"");
    assertThat(all(RADIO, loser.asString())).hasSize(1).doesNotContain(last);
    assertThat(families.stream().map(Household::had).filter(last::equals)).hasSize(1);
  }

  @Test
  @DisplayName(
      "may go to a field in reach, is not shown one that is too far, nor what is too early")
  void reach() {
    peers.send(peers.field("NEAR"), peers.field("FAR"));
    for (String field : List.of("NEAR", "FAR")) {
      await()
          .atMost(PATIENCE)
          .until(() -> as("manager").get("/fit-days").asString().contains("Field " + field));
      new Fitter("manager", field).announces(DAY_AFTER, "17:30", "18:00");
    }
    Household family = lateAt("REACH");
    peers.send(peers.field("REACH", "America/Chicago", Map.of("NEAR", 25, "FAR", 200)));
    await().atMost(PATIENCE).until(() -> family.looks().asString().contains("Field NEAR"));
    announcesWithinTheDay("REACH", ZoneId.of("America/Chicago"));
    String page = family.looks().asString();
    assertThat(page)
        .contains("At Field NEAR, about 25 minutes from your field", "Times before")
        .doesNotContain("Field FAR");
    assertThat(page).doesNotContain("At Field REACH, your field");
  }

  /** Half an hour that lies ahead at any time of the day, and before what is ordered arrives. */
  private static void announcesWithinTheDay(String field, ZoneId zone) {
    ZonedDateTime soon = ZonedDateTime.now(zone).plusHours(2).truncatedTo(ChronoUnit.MINUTES);
    boolean pastMidnight = !soon.plusMinutes(30).toLocalDate().equals(soon.toLocalDate());
    ZonedDateTime opens = pastMidnight ? soon.plusMinutes(30) : soon;
    new Fitter("manager", field)
        .announces(
            opens.toLocalDate().toString(),
            opens.toLocalTime().toString(),
            opens.plusMinutes(30).toLocalTime().toString());
  }

  /** Whose helmet has to be ordered and is there a day from now. */
  private Household lateAt(String field) {
    Person person = peers.arrives(field);
    peers.send(
        peers.issued(person.tag(), person.player(), UUID.randomUUID()),
        peers.quarantined(person.tag(), person.player()));
    UUID refitCase = peers.refitOf(person.player());
    Household family = Household.of(person, refitCase, "en");
    assertThat(family.looks().asString()).contains("We do not know yet", "There is no date yet");
    peers.send(peers.missing(refitCase, person.player(), "youth-medium"));
    await().atMost(PATIENCE).until(() -> refit(refitCase).getString("needs[0].arrivesAt") != null);
    return family;
  }

  @Test
  @DisplayName("whose case is over is told so, and changes nothing")
  void over() {
    Household family = waitsAt("OVER", "en");
    new Fitter("manager", "OVER").announces(DAY, "17:30", "18:00");
    String had = family.had();
    String slot = family.offered().getFirst();
    peers.send(peers.left(family.person().player()));
    await().atMost(PATIENCE).until(() -> family.looks().asString().contains("This re-fit is over"));
    Response late = family.takes(UUID.randomUUID(), had, slot);
    assertThat(late.statusCode()).isEqualTo(409);
    assertThat(late.asString()).contains("This re-fit is over");
    assertThat(given().get(family.path() + "/refit.ics").statusCode()).isEqualTo(404);
  }

  @Test
  @DisplayName("gets the same plain page for every link that is wrong, and nothing is kept of it")
  void deadLinks() {
    UUID id = UuidV7.next();
    Instant later = Instant.now().plusSeconds(60);
    String right = LINKS.seal(new SlotLinks.Slot(id, id, "en"), later);
    String notice = new TimedTokens(KEY, "tapeline notice page").seal(new byte[34], later);
    List<String> wrong =
        List.of(
            "guessed",
            LINKS.seal(new SlotLinks.Slot(id, id, "en"), Instant.now().minusSeconds(1)),
            notice,
            right.substring(0, right.length() - 1),
            right + "A",
            "B" + right.substring(1),
            "%" + Integer.toHexString(right.charAt(0)) + right.substring(1));
    for (String token : wrong) {
      Response dead = given().urlEncodingEnabled(false).get("/slot/" + token);
      assertThat(dead.statusCode()).as(token).isEqualTo(404);
      assertThat(dead.asString()).contains("This link does not work", "Este enlace no sirve");
      assertThat(
              given().urlEncodingEnabled(false).get("/slot/" + token + "/refit.ics").statusCode())
          .isEqualTo(404);
      assertThat(
              given()
                  .urlEncodingEnabled(false)
                  .formParam("slot", "x")
                  .post("/slot/" + token)
                  .statusCode())
          .isEqualTo(404);
      assertThat(dead.header("Cache-Control")).isEqualTo("no-store");
      assertThat(dead.header("Referrer-Policy")).isEqualTo("no-referrer");
      assertThat(dead.header("X-Robots-Tag")).contains("noindex");
      assertThat(dead.header("Content-Security-Policy")).startsWith("default-src 'none'");
    }
    assertThat(given().get("/slot/" + right).asString()).contains("This re-fit is over");
  }

  @Test
  @DisplayName("who opens a link too often has to wait, by the address that the gateway tells")
  void tooOften() {
    String token =
        LINKS.seal(
            new SlotLinks.Slot(UuidV7.next(), UuidV7.next(), "es"), Instant.now().plusSeconds(60));
    int visits = 0;
    Response wait = from("203.0.113.0", token);
    while (wait.statusCode() == 200 && visits < 100) {
      wait = from("203.0.113." + ++visits, token);
    }
    assertThat(visits).isBetween(60, 99);
    assertThat(wait.statusCode()).isEqualTo(429);
    assertThat(wait.asString()).contains("Please wait a minute", "Espere un minuto");
    assertThat(Integer.parseInt(wait.header("Retry-After"))).isBetween(1, 60);
    assertThat(wait.header("Cache-Control")).isEqualTo("no-store");

    int guesses = 0;
    while (from("203.0.113.200", "guess" + guesses).statusCode() == 404 && guesses < 600) {
      guesses++;
    }
    assertThat(guesses).isBetween(300, 599);
    assertThat(from("203.0.113.201", "guess").statusCode()).isEqualTo(404);
  }

  private static Response from(String address, String token) {
    return given().header("X-Forwarded-For", address).get("/slot/" + token);
  }
}
