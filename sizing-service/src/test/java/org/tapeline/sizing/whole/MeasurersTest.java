package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.measure;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The measurers")
class MeasurersTest {

  @Test
  @DisplayName("are told when their tape reads too large, and their heads are known less surely")
  void stretchedTape() {
    for (int i = 0; i < 25; i++) {
      int head = 520 + i;
      String number = enrolledAt("NORTH");
      measure("manager", number, "" + head, "" + head).statusCode(200);
      measure("fitter.north", number, "" + (head + 5), "" + (head + 10)).statusCode(200);
    }
    String page = as("manager").get("/measurers").then().statusCode(200).extract().asString();
    assertThat(lineOf(page, "fitter.north"))
        .contains("Hold the tape against a steel rule: it reads too large.");
    assertThat(page.indexOf("fitter.north")).isLessThan(page.indexOf("<strong>manager"));

    String steady = enrolledAt("NORTH");
    double manager = uncertainty("manager", steady);
    double fitter = uncertainty("fitter.north", steady);
    assertThat(fitter).isGreaterThan(1.3 * manager);
  }

  @Test
  @DisplayName("are shown to the equipment manager alone")
  void forTheManager() {
    as("fitter.north").get("/measurers").then().statusCode(equalTo(403));
  }

  private static double uncertainty(String by, String number) {
    return measure(by, number, "530", "530")
        .statusCode(200)
        .extract()
        .jsonPath()
        .getDouble("uncertaintyMm");
  }

  private static String lineOf(String page, String measurer) {
    String line = page.substring(page.indexOf("<strong>" + measurer));
    return line.substring(0, line.indexOf("</tr>"));
  }
}
