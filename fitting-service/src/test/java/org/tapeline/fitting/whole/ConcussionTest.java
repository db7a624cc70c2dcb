package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;
import static org.tapeline.fitting.whole.Fitter.post;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.today.WhenTimeGoesByThenTellDue;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("When a concussion is suspected")
class ConcussionTest {
  private static final String OUT =
      "Out of play: a licensed health-care professional decides the return";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject WhenTimeGoesByThenTellDue time;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private Person fitted() {
    Person ada = peers.arrives("NORTH");
    UUID session = fitter.fits(ada.player(), ada.tag());
    peers.send(peers.issued(ada.tag(), ada.player(), session));
    state(ada, "may-wear", "");
    return ada;
  }

  private static void state(Person person, String code, String reason) {
    await()
        .atMost(PATIENCE)
        .untilAsserted(
            () -> {
              Response answer = as("manager").get("/api/players/" + person.player());
              assertThat(answer.jsonPath().getString("state.code"))
                  .as(answer.asString())
                  .isEqualTo(code);
              assertThat(answer.jsonPath().getString("state.reason")).isEqualTo(reason);
            });
  }

  private void suspects(Person person) {
    fitter.says("/api/concussions", Map.of("player", person.number()));
  }

  private static Response clears(String user, Person person, Object body) {
    return post(user, "/api/concussions/" + person.player() + "/return", body);
  }

  private Envelope setAside(Person person) {
    Map<String, Object> data =
        new HashMap<>(
            Map.of(
                "tag", person.tag(), "why", "inspection", "place", "NORTH", "at", Instant.now()));
    data.put("player", person.player());
    return peers.helmet(person.tag(), "helmet-quarantined", data);
  }

  @Test
  @DisplayName("the sign-off is withdrawn, the helmet is named, and a re-fit is opened, at once")
  void atOnce() {
    Person ada = fitted();
    suspects(ada);
    state(ada, "do-not-wear", OUT);
    Message suspected = peers.hears("concussion-suspected", ada.player());
    assertThat(suspected.data().get("tag").asText()).isEqualTo(ada.tag());
    assertThat(peers.hears("sign-off-withdrawn", ada.player()).data().get("why").asText())
        .isEqualTo("suspected-concussion");
    assertThat(peers.hears("refit-opened", ada.player()).data().get("why").asText())
        .isEqualTo("suspected-concussion");
    peers.send(setAside(ada));
    assertThat(as("manager").get("/players/" + ada.player()).asString()).contains(OUT);
  }

  @Test
  @DisplayName("no new fit and no time that goes by brings the player back, only a person's word")
  void onlyAPerson() {
    Person ada = fitted();
    suspects(ada);
    Envelope aside = setAside(ada);
    peers.send(aside, aside);
    Person spare = peers.arrives("NORTH");
    UUID session = fitter.fits(ada.player(), spare.tag());
    peers.send(peers.issued(spare.tag(), ada.player(), session));
    time.lookAtAll();
    state(ada, "do-not-wear", OUT);
    assertThat(clears("fitter.north", ada, Map.of("confirmed", false)).statusCode()).isEqualTo(422);
    assertThat(clears("fitter.north", ada, Map.of()).statusCode()).isEqualTo(422);
    state(ada, "do-not-wear", OUT);
    assertThat(clears("fitter.north", ada, Map.of("confirmed", true)).statusCode()).isEqualTo(200);
    peers.hears("return-cleared", ada.player());
    state(ada, "may-wear", "");
    assertThat(clears("manager", ada, Map.of("confirmed", true)).statusCode()).isEqualTo(409);
  }

  @Test
  @DisplayName("the cleared return brings no helmet back: the player is fitted again")
  void fittedAgain() {
    Person ada = fitted();
    suspects(ada);
    assertThat(clears("manager", ada, Map.of("confirmed", true)).statusCode()).isEqualTo(200);
    state(ada, "do-not-wear", "The helmet went to inspection: fit again");
  }

  @Test
  @DisplayName("a pass before and a quarantine after, in either order, end in the same state")
  void anyOrder() {
    Person first = fitted();
    peers.send(setAside(first));
    state(first, "do-not-wear", "The helmet went to inspection: fit again");
    suspects(first);
    Person second = fitted();
    suspects(second);
    peers.send(setAside(second));
    for (Person person : List.of(first, second)) {
      state(person, "do-not-wear", OUT);
      assertThat(clears("manager", person, Map.of("confirmed", true)).statusCode()).isEqualTo(200);
      state(person, "do-not-wear", "The helmet went to inspection: fit again");
    }
  }

  @Test
  @DisplayName("the coach of the team says so, and never confirms the return alone")
  void coach() {
    Person ada = fitted();
    peers.send(peers.moved(ada.player(), "U10-HAWKS", "NORTH"));
    await()
        .atMost(PATIENCE)
        .until(() -> as("coach.hawks").get("/concussion/" + ada.player()).statusCode() == 200);
    Response page =
        as("coach.hawks")
            .redirects()
            .follow(false)
            .formParam("commandId", UUID.randomUUID())
            .formParam("tag", ada.tag())
            .post("/concussion/" + ada.player() + "/suspected");
    assertThat(page.statusCode()).isEqualTo(303);
    state(ada, "do-not-wear", OUT);
    assertThat(clears("coach.hawks", ada, Map.of("confirmed", true)).statusCode()).isEqualTo(403);
    assertThat(as("coach.hawks").get("/concussion/" + ada.player()).asString())
        .contains("Out of play")
        .doesNotContain("name=\"confirmed\"");
    assertThat(as("fitter.north").get("/concussion/" + ada.player()).asString())
        .contains("I confirm that a licensed health-care professional has cleared");
    assertThat(clears("fitter.south", ada, Map.of("confirmed", true)).statusCode()).isEqualTo(403);
  }

  @Test
  @DisplayName("a helmet that there is not is told beside the field, and the box has to be ticked")
  void beside() {
    Person ada = fitted();
    String path = "/concussion/" + ada.player();
    Response wrong =
        as("fitter.north")
            .formParam("commandId", UUID.randomUUID())
            .formParam("tag", "NO-SUCH")
            .post(path + "/suspected");
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.asString()).contains("id=\"tag-error\"", "value=\"NO-SUCH\"");
    suspects(ada);
    Response unticked =
        as("fitter.north").formParam("commandId", UUID.randomUUID()).post(path + "/cleared");
    assertThat(unticked.statusCode()).isEqualTo(422);
    assertThat(unticked.asString()).contains("id=\"confirmed-error\"");
  }
}
