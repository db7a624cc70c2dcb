package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.time.Duration;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("A team's sheet")
class TeamSheetTest {
  private static final String SHEET = "/teams/U10-HAWKS/sheet";
  private static final Duration SOON = Duration.ofSeconds(30);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private final String name = "Luz" + UuidV7.next().toString().substring(24);
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
      "has a slip in the family's language, and a line for the coach, until it is handed over")
  void slips() throws IOException {
    Family family = new Family(name).guardian("es", null);
    family.details().forEach(event -> peers.send(event, UuidV7.next()));
    Refit refit = new Refit(family.player, "RIVER");
    peers.send(refit.opened(1), refit.correlationId);
    peers.send(refit.booked(2, "2035-09-15T15:00:00Z"), refit.correlationId);
    await().atMost(SOON).until(() -> as("manager").get(SHEET).asString().contains(name));

    String page = as("coach.hawks").get(SHEET).then().statusCode(200).extract().asString();
    assertThat(page)
        .contains("lang=\"es\"", "No use este casco", "Sábado 15 de septiembre")
        .contains("Guardian of " + name, name + ", LV-0001, U10 Hawks", "+1 500-555-0107")
        .doesNotContain("Slip handed over");
    assertThat(paper())
        .contains("Helmet slips: U10 Hawks", "Tick who has the slip")
        .contains("No use este casco", "Tenga cuidado", "Teléfono: +1 500-555-0107");

    String notice =
        as("manager")
            .get("/api/notices?refitCase=" + refit.id)
            .jsonPath()
            .getString("notices.find { it.kind == 'do-not-wear-refit' }.notice");
    assertThat(as("manager").get(SHEET).asString()).contains("Slip handed over", notice);
    as("manager")
        .formParam("commandId", UuidV7.next())
        .formParam("guardian", family.guardianId(0))
        .formParam("notice", notice)
        .formParam("way", "sheet")
        .formParam("team", "U10-HAWKS")
        .redirects()
        .follow(false)
        .post("/unreached/reached")
        .then()
        .statusCode(303)
        .header("Location", "/notify/teams/U10-HAWKS/sheet");
    assertThat(as("manager").get(SHEET).asString()).doesNotContain(name);
  }

  @Test
  @DisplayName("is for the team's coach, the fitters of its fields and the manager")
  void whoMayWhat() {
    given().redirects().follow(false).get("/teams/U10-HAWKS/sheet.pdf").then().statusCode(302);
    as("fitter.river").get(SHEET).then().statusCode(403);
    as("coach.hawks").get("/teams/U12-OWLS/sheet").then().statusCode(403);
    as("manager").get("/teams/U12-OWLS/sheet.pdf").then().statusCode(200);
  }

  private static String paper() throws IOException {
    byte[] pdf = as("manager").get(SHEET + ".pdf").then().statusCode(200).extract().asByteArray();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  private static RequestSpecification as(String user) {
    return given().auth().preemptive().basic(user, "larkfield");
  }
}
