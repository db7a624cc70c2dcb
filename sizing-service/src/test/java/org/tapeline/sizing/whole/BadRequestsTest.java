package org.tapeline.sizing.whole;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Whoever sends what cannot be read is told so and what to do:")
class BadRequestsTest {
  private static final String PLAYERS = "/api/players";

  @Test
  @DisplayName("a character that is none, in the address and in the body")
  void noText() {
    isProblem(as("manager").urlEncodingEnabled(false).get(PLAYERS + "?team=a%00b").then(), 400)
        .body("detail", containsString("Type it again"));
    isProblem(
            commandOf("manager")
                .contentType("application/json")
                .body("{\"readings\":[\"21\\u0000\"]}")
                .post(PLAYERS + "/" + UUID.randomUUID() + "/readings")
                .then(),
            400)
        .body("detail", containsString("readings"));
  }

  @Test
  @DisplayName("a day that nobody means")
  void farDays() {
    isProblem(
            commandOf("manager")
                .contentType("application/json")
                .body("{\"day\":\"+999999999-12-31\"}")
                .post("/api/size-mix/model-a/publish")
                .then(),
            400)
        .body("errors[0].field", equalTo("day"));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "{\"readings\":[",
        "",
        "[]",
        "{\"readings\":7}",
        "{\"readings\":[null]}",
        "\u00e4"
      })
  @DisplayName("a body that is not JSON, or other JSON")
  void bodies(String body) {
    isProblem(
        commandOf("manager")
            .contentType("application/json")
            .body(body)
            .post(PLAYERS + "/" + UUID.randomUUID() + "/readings")
            .then(),
        400);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"Accept, image/png, 406", "Content-Type, application/xml, 415"})
  @DisplayName("formats that are not spoken here")
  void formats(String header, String value, int status) {
    isProblem(
        given()
            .config(
                RestAssuredConfig.config()
                    .encoderConfig(
                        EncoderConfig.encoderConfig()
                            .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
            .auth()
            .preemptive()
            .basic("manager", "larkfield")
            .header("Idempotency-Key", UUID.randomUUID())
            .contentType("application/json")
            .header(header, value)
            .body("{}")
            .post(PLAYERS + "/" + UUID.randomUUID() + "/readings")
            .then(),
        status);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {"Basic ====", "Basic bWFuYWdlcg==", "Basic bWFuYWdlcjp3cm9uZw==", "Bearer x.y.z"})
  @DisplayName("a password that is none")
  void passwords(String login) {
    isProblem(given().header("Authorization", login).get(PLAYERS).then(), 401)
        .body("detail", containsString("Sign in"));
    given()
        .header("Authorization", login)
        .get("/players")
        .then()
        .statusCode(401)
        .contentType("text/html")
        .body(containsString("Not signed in"));
  }

  @Test
  @DisplayName("more than is taken at once, before it is sent")
  void tooLarge() {
    isProblem(
            commandOf("manager")
                .contentType("text/csv")
                .body(new byte[11 * 1024 * 1024])
                .post("/api/import/players")
                .then(),
            413)
        .body("detail", containsString("10 MB"));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"%", "first=%zz", "MANY"})
  @DisplayName("a form that breaks off, or has more fields than any page, by a page")
  void forms(String form) {
    String sent = form.equals("MANY") ? "f=v&".repeat(1_100) : form;
    as("manager")
        .config(
            RestAssuredConfig.config()
                .encoderConfig(
                    EncoderConfig.encoderConfig()
                        .encodeContentTypeAs(
                            "application/x-www-form-urlencoded", ContentType.TEXT)))
        .contentType("application/x-www-form-urlencoded")
        .body(sent)
        .post("/players/" + UUID.randomUUID() + "/measure")
        .then()
        .statusCode(400)
        .contentType("text/html")
        .body(containsString("What was sent could not be read"));
  }

  private static ValidatableResponse isProblem(ValidatableResponse answer, int status) {
    return answer
        .statusCode(status)
        .contentType("application/problem+json")
        .body("status", equalTo(status));
  }
}
