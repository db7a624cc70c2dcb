package org.tapeline.inventory.whole;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The page of plans")
class PlanPageTest {
  private static final String SIZE = "youth-large";

  @Inject Database database;

  private Roster roster;
  private String field;
  private final String model = freshModel();

  @BeforeEach
  void start() {
    Depot.places();
    roster = new Roster(database);
    field = roster.freshField();
  }

  @Test
  @DisplayName("says who gets a helmet, who gets none and why, and what would help")
  void says() {
    helmet(model, SIZE, "DEPOT");
    roster.player(field, model, SIZE);
    roster.player(field, model, SIZE);
    roster.player(field, model, "youth-small");
    String page = make(form().formParam("sort", "season").formParam("field", field));
    page(page)
        .body(containsString("Proved: no plan serves more"))
        .body(containsString("The one free helmet of Youth large in Model"))
        .body(containsString("There is no free helmet of Youth small in Model"))
        .body(containsString("1 more of Youth small in Model"))
        .body(containsString("Commit this plan"));
    page(page + "/helmets.csv")
        .header("Content-Type", containsString("text/csv"))
        .body(containsString("field,tag,model,size,from"))
        .body(containsString("DEPOT,advised,"));
  }

  @Test
  @DisplayName("shows beside the plan what more helmets would change")
  void compares() {
    helmet(model, SIZE, "DEPOT");
    roster.player(field, model, SIZE);
    roster.player(field, model, SIZE);
    String before = make(form().formParam("sort", "season").formParam("field", field));
    String id = before.substring(before.lastIndexOf('/') + 1);
    String page =
        make(
            form()
                .formParam("sort", "season")
                .formParam("from", id)
                .formParam("field", field)
                .formParam("kind", model + ":" + SIZE)
                .formParam("place", "DEPOT")
                .formParam("pieces", "4"));
    page(page)
        .body(containsString("With 4 more of Youth large in Model"))
        .body(containsString("Open the other plan"))
        .body(containsString("Everybody gets one"))
        .body(containsString("to be bought"));
    as("manager")
        .queryParam("from", id)
        .get("/plans")
        .then()
        .statusCode(200)
        .body(containsString("Change the plan and compare"));
  }

  @Test
  @DisplayName("keeps what was typed and says beside it what is wrong")
  void wrong() {
    form()
        .formParam("sort", "season")
        .formParam("field", field)
        .formParam("kind", model + ":" + SIZE)
        .formParam("place", "DEPOT")
        .formParam("pieces", "some")
        .post("/plans")
        .then()
        .statusCode(400)
        .body(containsString("value=\"some\""))
        .body(containsString("Write a whole number from 1 to 9999."));
    as("manager")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("sort", "hold")
        .formParam("hold", "that one")
        .post("/plans")
        .then()
        .statusCode(400)
        .body(containsString("Choose the hold"));
  }

  @Test
  @DisplayName("is filled in for a hold when one comes from there")
  void ofHold() {
    UUID hold = UUID.randomUUID();
    as("manager")
        .queryParam("hold", hold)
        .get("/plans")
        .then()
        .statusCode(200)
        .body(containsString("value=\"hold\" required checked"));
    String page = make(form().formParam("sort", "hold").formParam("hold", hold));
    page(page).body(containsString("Players of the hold " + hold));
  }

  @Test
  @DisplayName("says what became of it once it is committed, and can give everything back")
  void commits() {
    helmet(model, SIZE, field);
    roster.player(field, model, SIZE);
    String page = make(form().formParam("sort", "season").formParam("field", field));
    post(page + "/commit").then().statusCode(303);
    page(page).body(containsString("Committed. 1 helmets are kept"));
    post(page + "/commit").then().statusCode(409).body(containsString("committed before"));
    post(page + "/release").then().statusCode(303);
    page(page)
        .body(containsString("keeps nothing any more"))
        .body(not(containsString("Commit this plan")));
  }

  private static RequestSpecification form() {
    return as("manager")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .formParam("otherModels", "yes");
  }

  private static String make(RequestSpecification form) {
    return form.post("/plans")
        .then()
        .statusCode(303)
        .extract()
        .header("Location")
        .replaceFirst("^/inventory", "");
  }

  private static Response post(String path) {
    return as("manager")
        .redirects()
        .follow(false)
        .formParam("commandId", UUID.randomUUID())
        .post(path);
  }

  private static ValidatableResponse page(String path) {
    return as("depot").get(path).then().statusCode(200);
  }
}
