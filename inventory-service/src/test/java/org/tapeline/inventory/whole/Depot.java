package org.tapeline.inventory.whole;

import static io.restassured.RestAssured.given;

import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/** Requests as the people of the association send them, on places that all tests share. */
final class Depot {
  private static final AtomicInteger NEXT = new AtomicInteger();

  private Depot() {}

  static RequestSpecification as(String user) {
    return given().auth().preemptive().basic(user, "larkfield");
  }

  static RequestSpecification commandOf(String user) {
    return as(user).header("Idempotency-Key", UUID.randomUUID());
  }

  static ValidatableResponse importing(String what, String mode, String csv) {
    return commandOf("manager")
        .contentType("text/csv")
        .queryParam("mode", mode)
        .body(csv.getBytes(StandardCharsets.UTF_8))
        .post("/api/import/" + what)
        .then();
  }

  static void places() {
    importing(
            "places",
            "all-or-none",
            """
            code,name,kind,altitude_m,time_zone
            DEPOT,Larkfield depot,depot,1510,America/Denver
            NORTH,North Meadow,field,1620,America/Denver
            RIVER,River Bend,field,1480,America/Denver
            SOUTH,South Common,field,1555,America/Denver
            """)
        .statusCode(200);
    importing(
            "travel",
            "all-or-none",
            """
            from,to,minutes
            NORTH,DEPOT,18
            RIVER,NORTH,16
            SOUTH,NORTH,30
            """)
        .statusCode(200);
  }

  /** A model that no other test uses. */
  static String freshModel() {
    return "model-t" + NEXT.incrementAndGet();
  }

  /** Takes one helmet into stock and tells its tag. */
  static String helmet(String model, String size, String place) {
    importing(
            "helmets",
            "all-or-none",
            "model,size,lot,manufactured_on,certified_until,place\n"
                + String.join(
                    ",",
                    model,
                    size,
                    "L-" + UUID.randomUUID(),
                    LocalDate.now().minusMonths(6).toString(),
                    LocalDate.now().plusYears(2).toString(),
                    place))
        .statusCode(200);
    return as("manager")
        .queryParam("model", model)
        .queryParam("size", size)
        .queryParam("place", place)
        .get("/api/helmets")
        .then()
        .statusCode(200)
        .extract()
        .path("[-1].tag");
  }

  static String stateOf(String tag) {
    return as("manager").get("/api/helmets/" + tag).then().statusCode(200).extract().path("state");
  }

  /** Does what the warehouse does with a request: pick, ship, receive. */
  static ValidatableResponse step(String request, String step) {
    return commandOf("depot").post("/api/restock/" + request + "/" + step).then();
  }

  static ValidatableResponse cancel(String request, String why) {
    return commandOf("depot")
        .contentType("application/json")
        .body("{\"why\":\"" + why + "\"}")
        .post("/api/restock/" + request + "/cancel")
        .then();
  }

  static String stateOfRequest(String request) {
    return as("depot")
        .queryParam("all", true)
        .get("/api/restock")
        .then()
        .statusCode(200)
        .extract()
        .path("find { it.request == '" + request + "' }.state");
  }

  static ValidatableResponse damage(String user, String tag, String where, String what) {
    return commandOf(user)
        .contentType("application/json")
        .body("{\"where\":\"" + where + "\",\"what\":\"" + what + "\"}")
        .post("/api/helmets/" + tag + "/damage")
        .then();
  }
}
