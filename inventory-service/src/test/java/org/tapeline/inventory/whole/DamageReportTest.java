package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.damage.Pictures;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A damage report from a phone")
class DamageReportTest {
  private static final byte[] PHOTO = Pictures.byCamera(2000, 1000, 6, "GPS 40.1 N");

  private String tag;
  private String path;

  @BeforeEach
  void helmetAtTheField() {
    Depot.places();
    tag = helmet(freshModel(), "youth-small", "NORTH");
    path = "/helmets/" + tag + "/damage";
  }

  private Response sends(UUID id, String where, String what, byte[] photo) {
    return as("fitter.north")
        .redirects()
        .follow(false)
        .multiPart("commandId", id.toString())
        .multiPart("where", where)
        .multiPart("what", what)
        .multiPart("photo", "damage.jpg", photo, "image/jpeg")
        .post(path);
  }

  private Response photoOf(String user, UUID report) {
    return as(user).get(path + "/" + report + "/photo");
  }

  @Test
  @DisplayName("begins with the tag as typed, or with a helmet of the own fields")
  void start() {
    String own = as("fitter.north").get("/damage").then().statusCode(200).extract().asString();
    assertThat(own).contains("value=\"" + tag + "\"");
    assertThat(as("fitter.south").get("/damage").asString()).doesNotContain(tag);
    goes("fitter.north", "tag", " " + tag.toLowerCase() + " ")
        .then()
        .statusCode(303)
        .header("Location", equalTo("/inventory" + path));
    goes("fitter.north", "chosen", tag).then().statusCode(303);
    String mistyped = tag.substring(0, 3) + (tag.charAt(3) == '9' ? '8' : '9') + tag.substring(4);
    goes("fitter.north", "tag", mistyped)
        .then()
        .statusCode(400)
        .body(containsString("id=\"tag-error\""), containsString("value=\"" + mistyped + "\""))
        .body(containsString("The check character at the end does not fit"));
    goes("fitter.south", "tag", tag).then().statusCode(403).body(containsString("not yours"));
    goes("fitter.north", "tag", "").then().statusCode(400).body(containsString("Type the tag"));
  }

  private static Response goes(String user, String field, String value) {
    return as(user).redirects().follow(false).formParam(field, value).post("/damage");
  }

  @Test
  @DisplayName("asks where, then what, then shows what follows before it is sent")
  void steps() {
    as("fitter.north").get(path).then().statusCode(200).body(containsString("Where is"));
    as("fitter.north")
        .get(path + "?where=shell")
        .then()
        .statusCode(200)
        .body(containsString("what=crack"), not(containsString("what=leaks")));
    as("fitter.north")
        .get(path + "?where=shell&what=crack")
        .then()
        .statusCode(200)
        .body(containsString("Out of use at once"), containsString("type=\"file\""));
    as("fitter.north")
        .get(path + "?where=shell&what=scratch")
        .then()
        .body(containsString("Noted only"));
    as("fitter.north").get(path + "?where=%3Cb%3E").then().body(containsString("Where is"));
  }

  @Test
  @DisplayName("of a crack takes the helmet out of use, says what to do, and keeps the photo")
  void withPhoto() throws Exception {
    UUID id = UUID.randomUUID();
    sends(id, "shell", "crack", PHOTO)
        .then()
        .statusCode(303)
        .header("Location", equalTo("/inventory" + path + "/" + id));
    assertThat(stateOf(tag)).isEqualTo("quarantined");
    as("fitter.north")
        .get(path + "/" + id)
        .then()
        .statusCode(200)
        .body(containsString("Tell the player to take it off"), containsString("Put it aside"))
        .body(containsString("<img"));
    Response photo = photoOf("fitter.north", id);
    photo
        .then()
        .statusCode(200)
        .contentType("image/jpeg")
        .header("X-Content-Type-Options", equalTo("nosniff"))
        .header("Content-Security-Policy", containsString("sandbox"))
        .header("Cache-Control", equalTo("no-store"));
    assertThat(new String(photo.asByteArray(), "ISO-8859-1")).doesNotContain("GPS");
    photoOf("depot", id).then().statusCode(200);
    photoOf("fitter.south", id).then().statusCode(403);
    photoOf("coach.hawks", id).then().statusCode(403);
  }

  @Test
  @DisplayName("counts also when its photo cannot be taken, and another can be sent later")
  void photoRefused() {
    UUID id = UUID.randomUUID();
    String where =
        sends(id, "shell", "crack", "no photo".getBytes())
            .then()
            .statusCode(303)
            .extract()
            .header("Location")
            .substring("/inventory".length());
    assertThat(stateOf(tag)).isEqualTo("quarantined");
    as("fitter.north")
        .get(where)
        .then()
        .body(containsString("id=\"photo-error\""), containsString("JPEG and PNG"))
        .body(containsString("The report itself has been sent"));
    photoOf("fitter.north", id).then().statusCode(404);
    later(id, "also none".getBytes()).then().statusCode(422).body(containsString("photo-error"));
    later(id, PHOTO).then().statusCode(303);
    photoOf("fitter.north", id).then().statusCode(200);
    later(id, PHOTO).then().statusCode(409).body(containsString("a photo already"));
  }

  private Response later(UUID report, byte[] photo) {
    return as("fitter.north")
        .redirects()
        .follow(false)
        .multiPart("commandId", UUID.randomUUID().toString())
        .multiPart("photo", "damage.jpg", photo, "image/jpeg")
        .post(path + "/" + report + "/photo");
  }

  @Test
  @DisplayName("is seen by who sent it also when the helmet then counts as another field's")
  void elsewhere() {
    UUID id = UUID.randomUUID();
    sends(id, "shell", "crack", PHOTO).then().statusCode(303);
    commandOf("depot")
        .contentType("application/json")
        .body("{\"place\":\"SOUTH\"}")
        .post("/api/helmets/" + tag + "/move")
        .then()
        .statusCode(200);
    as("fitter.north").get(path).then().statusCode(403);
    as("fitter.north").get(path + "/" + id).then().statusCode(200);
    photoOf("fitter.north", id).then().statusCode(200);
  }

  @Test
  @DisplayName("that is sent twice counts once, with its photo")
  void twice() {
    UUID id = UUID.randomUUID();
    sends(id, "shell", "scratch", PHOTO).then().statusCode(303);
    sends(id, "shell", "scratch", PHOTO)
        .then()
        .statusCode(303)
        .header("Location", equalTo("/inventory" + path + "/" + id));
    assertThat(stateOf(tag)).isEqualTo("available");
    as("fitter.north").get(path + "/" + id).then().body(containsString("Noted only"));
  }

  @Test
  @DisplayName("keeps its place in the history when the equipment manager deletes its photo")
  void deleted() {
    UUID id = UUID.randomUUID();
    sends(id, "shell", "crack", PHOTO).then().statusCode(303);
    String api = "/api/helmets/" + tag + "/damage/" + id + "/photo";
    commandOf("fitter.north").delete(api).then().statusCode(403);
    commandOf("depot").delete(api).then().statusCode(403);
    commandOf("manager").delete(api).then().statusCode(200);
    as("manager").get(api).then().statusCode(404);
    as("manager").get(path + "/" + id).then().body(containsString("has been deleted"));
    as("manager").get("/helmets/" + tag).then().body(containsString("damage reported"));
    commandOf("fitter.north")
        .contentType("image/jpeg")
        .body(PHOTO)
        .post(api)
        .then()
        .statusCode(200)
        .body("width", equalTo(800), "height", equalTo(1600));
  }

  @Test
  @DisplayName("of another helmet has no photo here")
  void otherHelmet() {
    commandOf("fitter.north")
        .contentType("image/jpeg")
        .body(PHOTO)
        .post("/api/helmets/" + tag + "/damage/" + UUID.randomUUID() + "/photo")
        .then()
        .statusCode(404)
        .body("detail", containsString("no such damage report"));
  }
}
