package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.importing;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("An import of size charts")
class ChartImportTest {
  private static final String HEADER = "model,size,from,to,unit\n";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName("publishes a first version, nothing for the same file, a second for a changed one")
  void versions() {
    String csv = HEADER + "model-v,small,19.5,20.5,in\nmodel-v,large,20.75,22,in\n";
    importing("charts", "all-or-none", csv).statusCode(200).body("accepted", equalTo(2));
    importing("charts", "all-or-none", csv)
        .statusCode(200)
        .body("accepted", equalTo(0), "unchanged", equalTo(2));
    importing("charts", "all-or-none", csv.replace("22,in", "22.5,in"))
        .statusCode(200)
        .body("accepted", equalTo(2));

    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(Duration.ofSeconds(20))
          .until(() -> broker.ofKey("sizing.events", "model-v").size() == 2);
      assertThat(broker.ofKey("sizing.events", "model-v"))
          .allMatch(m -> m.is("chart-published") && m.stream().equals("chart-model-v"))
          .extracting(m -> m.data().path("version").asInt())
          .containsExactly(1, 2);
    }
    as("fitter.north")
        .get("/api/charts")
        .then()
        .statusCode(200)
        .body("find { it.model == 'model-v' }.version", equalTo(2))
        .body("find { it.model == 'model-v' }.sizes[1].toMm", equalTo(571.5f));
    as("fitter.north")
        .get("/charts")
        .then()
        .statusCode(200)
        .body(containsString("Model V"), containsString("20 3/4 in to 22 1/2 in"))
        .body(containsString("527 to 572 mm"));
  }

  @ParameterizedTest(name = "{2}: {3}")
  @DisplayName("names the row, the column and what to do")
  @CsvSource(
      delimiter = '|',
      value = {
        "model-e,small,500,520,mm;model-e,large,520,560,mm | 3 | from | overlap",
        "model-e,small,520,500,mm                          | 2 | to   | above the start",
        "model-e,small,500,520,mm;model-e,large,53,56,cm   | 3 | unit | one unit",
        "model-e,small,500,520,pt                          | 2 | unit | mm, cm and in",
        "model-e,small,50,52,mm                            | 2 | unit | Is the unit right",
        "model-e,small,fifty,520,mm                        | 2 | from | a number",
        "model-e,,500,520,mm                               | 2 | size | youth-medium",
        "Model E,small,500,520,mm                          | 2 | model | small letters",
        "model-e,small,500,520,mm;model-e,small,530,560,mm | 3 | size | twice",
      })
  void rows(String rows, int row, String column, String message) {
    importing("charts", "all-or-none", HEADER + rows.strip().replace(";", "\n"))
        .statusCode(422)
        .body("errors", hasSize(1))
        .body("errors[0].row", equalTo(row))
        .body("errors[0].column", equalTo(column))
        .body("errors[0].message", containsString(message));
    as("manager").get("/api/charts").then().body("model", not(hasItem("model-e")));
  }

  @Test
  @DisplayName("takes whole charts only, where good rows were chosen: never half a chart")
  void wholeCharts() {
    importing(
            "charts",
            "good-rows",
            HEADER + "model-g,small,500,520,mm\nmodel-h,small,500,520,mm\nmodel-h,large,x,560,mm\n")
        .statusCode(200)
        .body("accepted", equalTo(1), "rejected", equalTo(2))
        .body("errors.row", equalTo(List.of(4)));
    as("manager")
        .get("/api/charts")
        .then()
        .body("model", hasItem("model-g"))
        .body("model", not(hasItem("model-h")));
  }

  @Test
  @DisplayName("takes none when a row's model cannot be read: it might belong to any")
  void unreadableModel() {
    importing(
            "charts", "good-rows", HEADER + "model-j,small,500,520,mm\nModel J,large,530,560,mm\n")
        .statusCode(200)
        .body("accepted", equalTo(0), "rejected", equalTo(2))
        .body("errors.row", equalTo(List.of(3)));
    as("manager").get("/api/charts").then().body("model", not(hasItem("model-j")));
  }
}
