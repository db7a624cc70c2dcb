package org.tapeline.sizing.whole;

import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;

import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.Map;
import java.util.UUID;

/** Drafts of charts, as programs make, preview and publish them. */
final class Drafting {
  private Drafting() {}

  /** Medium from 520 mm to an end, large from a start to 585 mm. */
  static String chart(String model, int mediumTo, int largeFrom) {
    return "model,size,from,to,unit\n%s,youth-medium,520,%d,mm\n%s,youth-large,%d,585,mm\n"
        .formatted(model, mediumTo, model, largeFrom);
  }

  static ValidatableResponse drafting(String csv) {
    return commandOf("manager")
        .contentType("text/csv")
        .queryParam("draft", "true")
        .body(csv)
        .post("/api/import/charts")
        .then()
        .statusCode(200);
  }

  static JsonPath previewOf(String model) {
    JsonPath all =
        as("manager").get("/api/charts/drafts").then().statusCode(200).extract().jsonPath();
    return all.setRootPath("find { it.model == '" + model + "' }");
  }

  static ValidatableResponse publishing(UUID command, String model, int version, String draft) {
    return as("manager")
        .header("Idempotency-Key", command)
        .contentType("application/json")
        .body(Map.of("version", version, "draft", draft))
        .post("/api/charts/drafts/" + model + "/publish")
        .then();
  }

  static String inForce(String model) {
    return "find { it.model == '" + model + "' }.version";
  }

  /** Which size the player is advised. */
  static String size(String number, String model) {
    return as("manager")
        .get("/api/players/" + number)
        .jsonPath()
        .getString("advice.find { it.model == '" + model + "' }.size");
  }
}
