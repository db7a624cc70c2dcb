package org.tapeline.fitting.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.evidence.Fingerprint;
import org.tapeline.fitting.evidence.SheetKey;
import org.tapeline.fitting.evidence.SheetLinks;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The evidence sheet of a sign-off")
class EvidenceSheetTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject SheetLinks links;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private Peers peers;
  private Person person;
  private UUID session;

  @BeforeEach
  void aFittedPlayer() {
    peers = new Peers(kafka);
    person = peers.arrives(Person.next("U10-HAWKS"), "NORTH");
    session = fitter.opensWith(person.player(), person.tag());
    fitter.findsLoose(session);
    fitter.addsAir(session);
    fitter.passes(session);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private Paper paper() {
    Response sheet = as("fitter.north").get("/sign-offs/" + session + "/sheet.pdf");
    assertThat(sheet.statusCode()).isEqualTo(200);
    assertThat(sheet.contentType()).isEqualTo("application/pdf");
    return Paper.of(sheet.asByteArray());
  }

  private String scanned(Paper paper) {
    Response page = given().get(paper.path());
    assertThat(page.statusCode()).as(page.asString()).isEqualTo(200);
    return page.asString();
  }

  private static int version() {
    return as("fitter.north").get("/api/protocol").jsonPath().getInt("version");
  }

  private void holds(Paper paper) {
    await().atMost(PATIENCE).until(() -> scanned(paper).contains("It holds."));
  }

  @Test
  @DisplayName(
      "says who was fitted in what, by whom, every check, what was tried, and the cautions")
  void sheet() {
    Paper paper = paper();
    int checks = as("fitter.north").get("/api/protocol").jsonPath().getList("checks").size();
    assertThat(paper.text())
        .contains("Ada Quillfeather", person.number(), person.team(), person.tag())
        .contains("Model A", "Youth medium", "fitter.north", "America/Chicago")
        .contains("air added once, let out not at all")
        .contains("24 °C (75 °F)", "300 m (984 ft)", "usual", "version " + version())
        .contains("Put on " + person.tag(), "Remedy: Add air", "failed (Loose")
        .contains("No helmet prevents every head or neck injury", "Fingerprint", "Page 1 of");
    assertThat(paper.text().split("Passed", -1)).hasSize(checks + 1);
    assertThat(paper.pages()).isBetween(1, 2);
    assertThat(paper.title()).contains("Helmet sign-off", person.tag());
    assertThat(paper.language()).isEqualTo("en");
  }

  @Test
  @DisplayName("opens by its code, without log-in, a page that agrees and does not say who it is")
  void verified() {
    Paper paper = paper();
    holds(paper);
    String page = scanned(paper);
    Paper.keep(page.getBytes(StandardCharsets.UTF_8), "verify.html");
    String fingerprint = page.replaceFirst("(?s).*class=\"fingerprint\">([^<]*)<.*", "$1");
    assertThat(paper.text()).contains(fingerprint);
    assertThat(page)
        .contains("<h1>The sign-off holds</h1>", "This paper agrees with the record")
        .contains(person.tag(), "version " + version())
        .doesNotContain("Ada", "Quillfeather", person.number(), person.team(), "May wear");
  }

  @Test
  @DisplayName("is not from this record when a letter of its code was changed")
  void altered() {
    String path = paper().path();
    String other = path.substring(0, path.length() - 1) + (path.endsWith("A") ? "B" : "A");
    for (String wrong : new String[] {other, "/verify/x"}) {
      Response page = given().get(wrong);
      assertThat(page.statusCode()).isEqualTo(404);
      Paper.keep(page.asByteArray(), "unknown.html");
      assertThat(page.asString()).contains("Not from this record").doesNotContain("It holds");
    }
  }

  @Test
  @DisplayName("that tells of other facts than the record does not agree, though its code is ours")
  void otherFacts() {
    Fingerprint other = new Fingerprint("00 11 22 33 44 55 66 77 88 99 aa bb");
    String address = links.addressOf(new SheetKey.Reference(session, other, Instant.now()));
    String page = given().get(address.replaceFirst("^.*/fitting", "")).asString();
    assertThat(page)
        .contains("<h1>This paper does not agree with the record</h1>", "ask the fitter")
        .doesNotContain("This paper agrees", "notice ok");
  }

  @Test
  @DisplayName("that was printed before a withdrawal agrees, and the page says that it ended")
  void withdrawnAfterPrinting() {
    Paper paper = paper();
    holds(paper);
    peers.send(peers.issued(person.tag(), person.player(), session));
    peers.send(peers.quarantined(person.tag(), person.player()));
    await().atMost(PATIENCE).until(() -> scanned(paper).contains("It ended on"));
    assertThat(scanned(paper))
        .contains("<h1>The sign-off has ended</h1>", "This paper agrees with the record")
        .doesNotContain("It holds", "damage");
    assertThat(paper().text()).contains("It ended on", "damage was found on the helmet");
    String player = as("fitter.north").get("/players/" + person.player()).asString();
    Paper.keep(player.getBytes(StandardCharsets.UTF_8), "player.html");
    Paper.keep(scanned(paper).getBytes(StandardCharsets.UTF_8), "verify-ended.html");
    assertThat(player).contains("/fitting/sign-offs/" + session + "/sheet.pdf", "damage was found");
  }

  @Test
  @DisplayName("says erased in the name's place once the player is erased, and still agrees")
  void erased() {
    Paper before = paper();
    UUID id = UuidV7.next();
    peers.send(
        new Envelope(
            "people",
            "org.tapeline.sizing.player-details.v1",
            "player-details-" + person.player(),
            99,
            person.player().toString(),
            id,
            id,
            id,
            null));
    await().atMost(PATIENCE).until(() -> paper().text().contains("erased was fitted by"));
    assertThat(paper().text()).doesNotContain("Ada", "Quillfeather", person.number());
    assertThat(scanned(before)).contains("This paper agrees with the record");
  }

  @Test
  @DisplayName("is for fitters of the field, the team's coach and the manager, and nobody else")
  void whoMay() {
    String sheet = "/sign-offs/" + session + "/sheet.pdf";
    assertThat(as("coach.hawks").get(sheet).statusCode()).isEqualTo(200);
    assertThat(as("manager").get(sheet).statusCode()).isEqualTo(200);
    assertThat(as("fitter.south").get(sheet).statusCode()).isEqualTo(403);
    assertThat(given().get(sheet).statusCode()).isNotEqualTo(200);
    peers.send(peers.moved(person.player(), "U12-OWLS", "NORTH"));
    await().atMost(PATIENCE).until(() -> as("coach.hawks").get(sheet).statusCode() == 403);
  }

  @Test
  @DisplayName("is not there for a session that signed nobody off")
  void noSignOff() {
    UUID open = fitter.opens(person.player());
    for (UUID none : new UUID[] {open, UuidV7.next()}) {
      Response answer = as("fitter.north").get("/sign-offs/" + none + "/sheet.pdf");
      assertThat(answer.statusCode()).isEqualTo(404);
    }
  }
}
