package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.token.SignedTokens;
import org.tapeline.journal.token.SlotLinks;
import org.tapeline.journal.token.TimedTokens;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("The parent's page")
class ParentPageTest {
  private static final Duration SOON = Duration.ofSeconds(20);
  private static final byte[] KEY =
      "a-key-for-tests-that-is-32-characters-or-more".getBytes(StandardCharsets.UTF_8);
  private static final Pattern CHOICE =
      Pattern.compile("href=\"/fitting/slot/([A-Za-z0-9_-]+)\">([^<]+)</a>");

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private final String tag = UUID.randomUUID().toString().substring(0, 8);
  private final Instant slot = Instant.now().plus(3, ChronoUnit.DAYS).truncatedTo(ChronoUnit.HOURS);
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private String rosa() {
    return "rosa." + tag + "@example.org";
  }

  private void publish(Event event) {
    peers.send(event, UuidV7.next());
  }

  /** The newest of that many mails leads to this page, within the service. */
  private String page(int mails) {
    await().atMost(SOON).until(() -> SmtpServer.to(rosa()).size() >= mails);
    String link = ReceivedMail.of(SmtpServer.to(rosa()).get(mails - 1)).link();
    return link.substring(link.indexOf("/n/"));
  }

  private Refit bookedFor(Family family) {
    family.details().forEach(this::publish);
    Refit refit = new Refit(family.player);
    publish(refit.opened(1));
    publish(refit.booked(2, slot.toString()));
    return refit;
  }

  @Test
  @DisplayName("leads to the free slots of its own case, in the reader's language, until the slot")
  void choice() {
    Family family = new Family("Ida").guardian("es", rosa());
    Refit refit = bookedFor(family);
    String path = page(1);
    Matcher choice = CHOICE.matcher(given().get(path).asString());
    assertThat(choice.find()).isTrue();
    assertThat(choice.group(2)).isEqualTo("Elegir otra hora para Ida");
    SlotLinks links = new SlotLinks(KEY);
    SlotLinks.Slot link = links.open(choice.group(1), Instant.now()).orElseThrow();
    assertThat(link.refitCase()).isEqualTo(refit.id);
    assertThat(link.language()).isEqualTo("es");
    Instant ends = slot.plusSeconds(1200);
    assertThat(links.open(choice.group(1), ends.minusSeconds(1))).isPresent();
    assertThat(links.open(choice.group(1), ends)).isEmpty();
    assertThat(given().get("/n/" + choice.group(1)).statusCode()).isEqualTo(404);

    publish(refit.closed(3, "fitted"));
    await().atMost(SOON).until(() -> !given().get(path).asString().contains("/fitting/slot/"));
    assertThat(given().get(path).statusCode()).isEqualTo(200);
  }

  @Test
  @DisplayName("shows the newer date on the page of an older notice, and no stale calendar file")
  void newer() {
    Family family = new Family("Noe").guardian("en", rosa());
    Refit refit = bookedFor(family);
    String first = page(1);
    assertThat(given().get(first).asString()).contains("refit.ics");
    publish(refit.booked(3, slot.plus(1, ChronoUnit.DAYS).toString()));
    String second = page(2);
    await().atMost(SOON).until(() -> given().get(first).asString().contains("newer news"));
    assertThat(given().get(first).asString())
        .doesNotContain("refit.ics")
        .contains("/fitting/slot/");
    assertThat(given().get(second).asString()).contains("refit.ics").doesNotContain("newer news");
  }

  @Test
  @DisplayName(
      "says whom to call, and asks staff for a call once a day, who then say that they did")
  void help() {
    Family family = new Family("Ivo").guardian("en", rosa(), "+13035550142");
    Refit refit = new Refit(family.player);
    family.details().forEach(this::publish);
    publish(refit.opened(1));
    publish(refit.booked(2, slot.toString()));
    String path = page(1);
    String page = given().get(path).asString();
    assertThat(page)
        .contains("href=\"tel:+13035550188\"", "Call the equipment manager", "+1 303-555-0188")
        .contains("Please call me");
    for (int i = 0; i < 2; i++) {
      Response asked =
          given()
              .redirects()
              .follow(false)
              .formParam("commandId", UUID.randomUUID())
              .post(path + "/help");
      assertThat(asked.statusCode()).isEqualTo(303);
    }
    assertThat(given().get(path).asString())
        .contains("We know that you want a call")
        .doesNotContain("Please call me</button>");
    String manager = "manager@larkfield.example.org";
    await()
        .atMost(SOON)
        .until(
            () ->
                SmtpServer.to(manager).stream()
                        .map(m -> ReceivedMail.of(m).subject())
                        .filter("Please call the family of Ivo"::equals)
                        .count()
                    == 1);

    String calls = asManager().get("/calls").asString();
    assertThat(calls).contains("Guardian of Ivo", "href=\"tel:+13035550142\"", "Ivo");
    Matcher help =
        Pattern.compile("Ivo</a>.*?action=\"/notify/calls/([0-9a-f-]+)\"", Pattern.DOTALL)
            .matcher(calls);
    assertThat(help.find()).isTrue();
    assertThat(coachCalls(help.group(1)).statusCode()).isEqualTo(403);
    for (int i = 0; i < 2; i++) {
      asManager()
          .redirects()
          .follow(false)
          .formParam("commandId", UUID.randomUUID())
          .post("/calls/" + help.group(1))
          .then()
          .statusCode(303);
    }
    assertThat(asManager().get("/calls").asString()).doesNotContain("Guardian of Ivo");
    assertThat(given().get(path).asString()).contains("We know that you want a call");
  }

  private static RequestSpecification asManager() {
    return given().auth().preemptive().basic("manager", "larkfield");
  }

  private static Response coachCalls(String help) {
    return given()
        .auth()
        .preemptive()
        .basic("coach.hawks", "larkfield")
        .formParam("commandId", UUID.randomUUID())
        .post("/calls/" + help);
  }

  @Test
  @DisplayName("is the same dead page for every wrong link, and lets nobody keep or pass it on")
  void wrongLinks() {
    Family family = new Family("Uma").guardian("en", rosa());
    bookedFor(family);
    String path = page(1);
    String token = path.substring("/n/".length());
    String other = page(1).substring("/n/".length());
    UUID id = UuidV7.next();
    byte[] content = ByteBuffer.allocate(16).putLong(1).putLong(2).array();
    Instant later = Instant.now().plusSeconds(60);
    TimedTokens pages = new TimedTokens(KEY, "tapeline notice page");
    List<String> wrong =
        List.of(
            "guess",
            pages.seal(content, later),
            pages.seal(content, Instant.now().minusSeconds(1)),
            pages.seal(new byte[3], later),
            new SlotLinks(KEY).seal(new SlotLinks.Slot(id, id, "en"), later),
            new SignedTokens(KEY, "tapeline turn off news").seal(new byte[32]),
            "B" + token.substring(1),
            token.substring(0, token.length() - 1),
            token + "=",
            "%" + Integer.toHexString(token.charAt(0)) + token.substring(1));
    String dead = wrong("/n/", "guess").asString();
    for (String each : wrong) {
      for (String kind : List.of("/n/", "/unsubscribe/")) {
        if (kind.equals("/n/") || !each.equals(wrong.get(5))) {
          Response answer = wrong(kind, each);
          assertThat(answer.statusCode()).as(kind + each).isEqualTo(404);
          assertThat(answer.asString()).as(kind + each).isEqualTo(dead);
        }
      }
      assertThat(raw().get("/n/" + each + "/refit.ics").asString()).isEqualTo(dead);
      assertThat(raw().formParam("commandId", id).post("/n/" + each + "/read").asString())
          .isEqualTo(dead);
    }
    assertThat(wrong("/unsubscribe/", token).asString()).isEqualTo(dead);
    for (Response guarded : List.of(given().get("/n/" + other), wrong("/n/", "guess"))) {
      assertThat(guarded.header("Cache-Control")).isEqualTo("no-store");
      assertThat(guarded.header("Referrer-Policy")).isEqualTo("no-referrer");
      assertThat(guarded.header("X-Robots-Tag")).isEqualTo("noindex, nofollow");
      assertThat(guarded.header("Content-Security-Policy")).doesNotContain("script");
    }
  }

  private static RequestSpecification raw() {
    return given().urlEncodingEnabled(false);
  }

  private static Response wrong(String kind, String token) {
    return raw().get(kind + token);
  }

  @Test
  @DisplayName("that is opened too often asks to wait, by the address that the gateway tells")
  void tooOften() {
    Response answer = from("198.51.100.7", "one-guess");
    int visits = 0;
    while (answer.statusCode() == 404 && visits < 100) {
      answer = from("198.51.100." + ++visits, "one-guess");
    }
    assertThat(visits).isBetween(60, 99);
    assertThat(answer.statusCode()).isEqualTo(429);
    assertThat(answer.asString()).contains("Please wait a minute", "Espere un minuto");
    assertThat(Integer.parseInt(answer.header("Retry-After"))).isBetween(1, 60);
    assertThat(from("198.51.100.7", "another-guess").statusCode()).isEqualTo(404);
  }

  private static Response from(String address, String token) {
    return given().header("X-Forwarded-For", address).get("/n/" + token);
  }
}
