package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;
import static org.tapeline.sizing.whole.Drafting.chart;
import static org.tapeline.sizing.whole.Drafting.drafting;
import static org.tapeline.sizing.whole.Drafting.previewOf;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The page of chart drafts")
class ChartDraftPageTest {

  @Test
  @DisplayName("follows an import, shows what would change and for whom, and publishes it")
  void publish() {
    importing("charts", "all-or-none", chart("page-a", 550, 552)).statusCode(200);
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "546", "546").statusCode(200);
    file("all-or-none", chart("page-a", 540, 555))
        .statusCode(303)
        .header("Location", "/sizing/charts/drafts");
    as("manager")
        .get("/charts/drafts")
        .then()
        .statusCode(200)
        .body(containsString("version 1 is in force"), containsString("520 to 550 mm"))
        .body(containsString("520 to 540 mm"), containsString("Ends 10 mm lower"))
        .body(containsString("Row 3, from 555:"), containsString("15 mm without a size"))
        .body(containsString("Ada Quillfeather"), containsString(number));

    form("page-a", "publish", "1", previewOf("page-a").getString("draft"))
        .statusCode(303)
        .header("Location", "/sizing/charts/drafts?published=page-a");
    as("manager")
        .get("/charts/drafts?published=page-a")
        .then()
        .body(containsString("Page A is in force"), not(containsString("id=\"page-a\"")));
    as("fitter.north").get("/charts").then().body(containsString("520 to 540 mm"));
  }

  @Test
  @DisplayName("says beside the draft why it cannot be published, and shows the newer preview")
  void outdated() {
    importing("charts", "all-or-none", chart("page-b", 550, 552)).statusCode(200);
    drafting(chart("page-b", 540, 541));
    String draft = previewOf("page-b").getString("draft");
    importing("charts", "all-or-none", chart("page-b", 545, 546)).statusCode(200);
    form("page-b", "publish", "1", draft)
        .statusCode(409)
        .body(containsString("id=\"page-b-error\""), containsString("Look at the preview again"))
        .body(containsString("520 to 545 mm"), containsString("name=\"version\" value=\"2\""));
    form("page-b", "publish", "two", draft)
        .statusCode(400)
        .body(containsString("id=\"page-b-error\""), containsString("which preview"));
    form("page-b", "publish", "2", draft).statusCode(303);
  }

  @Test
  @DisplayName("throws a draft away, and says so when it is gone already")
  void throwAway() {
    drafting(chart("page-c", 550, 552));
    form("page-c", "throw-away", "", "").statusCode(303);
    as("manager")
        .get("/charts/drafts?thrown-away=page-c")
        .then()
        .body(containsString("The draft of Page C is thrown away"))
        .body(not(containsString("id=\"page-c\"")));
    form("page-c", "throw-away", "", "")
        .statusCode(404)
        .body(containsString("There is no draft of page-c"));
    as("manager").get("/api/charts").then().body("model", not(hasItem("page-c")));
  }

  @Test
  @DisplayName("is reached from an import of which some charts are wrong; a known chart needs none")
  void partly() {
    String wrong = chart("page-e", 560, 541).lines().skip(1).reduce("", (a, b) -> a + b + "\n");
    file("good-rows", chart("page-d", 550, 552) + wrong)
        .statusCode(200)
        .body(containsString("2 drafted"), containsString("Look at what the drafts change"))
        .body(containsString("overlap"));
    as("manager").get("/api/charts/drafts").then().body("model", hasItem("page-d"));
    importing("charts", "all-or-none", chart("page-f", 550, 552)).statusCode(200);
    file("all-or-none", chart("page-f", 550, 552))
        .statusCode(200)
        .body(containsString("0 drafted, 2 unchanged"));
  }

  @Test
  @DisplayName("is not needed to take the charts home: they are exported as they are imported")
  void export() {
    String inches =
        "model-in,youth-small,19.2,20.5,in\n"
            + "model-in,youth-medium,20.625,21.9,in\n"
            + "model-in,youth-large,22.0625,22.7,in\n";
    String metric = "model-mm,small,495.5,520,mm\nmodel-mm,medium,520.5,556,mm\n";
    String centimetres = "model-cm,small,50.3,52.15,cm\n";
    importing("charts", "all-or-none", "model,size,from,to,unit\n" + inches + metric + centimetres)
        .statusCode(200);
    String exported =
        as("fitter.north")
            .get("/api/charts.csv")
            .then()
            .statusCode(200)
            .contentType("text/csv;charset=UTF-8")
            .header("Content-Disposition", containsString("charts.csv"))
            .extract()
            .asString();
    assertThat(exported)
        .startsWith("model,size,from,to,unit\n")
        .contains(inches, metric, centimetres);
    int rows = (int) exported.lines().count() - 1;
    importing("charts", "all-or-none", exported)
        .statusCode(200)
        .body("accepted", equalTo(0), "unchanged", equalTo(rows));
    as("fitter.north").get("/charts").then().body(containsString("/sizing/api/charts.csv"));
    as("coach.hawks").get("/api/charts.csv").then().statusCode(403);
  }

  private static ValidatableResponse form(String model, String what, String version, String draft) {
    return as("manager")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("version", version)
        .formParam("draft", draft)
        .post("/charts/drafts/" + model + "/" + what)
        .then();
  }

  private static ValidatableResponse file(String mode, String csv) {
    return as("manager")
        .redirects()
        .follow(false)
        .multiPart("commandId", UUID.randomUUID().toString())
        .multiPart("mode", mode)
        .multiPart("file", "charts.csv", csv.getBytes(StandardCharsets.UTF_8), "text/csv")
        .post("/import/charts")
        .then();
  }
}
