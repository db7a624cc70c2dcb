package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("What is known of a notice")
class TraceTest {
  private static final Duration SOON = Duration.ofSeconds(20);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  private final String rosa = "rosa." + UUID.randomUUID() + "@families.example.org";
  private Family family;
  private Refit refit;
  private Event opened;
  private Event booked;

  @BeforeEach
  void tellRosa() {
    family = new Family("Ida").guardian("es", rosa);
    refit = new Refit(family.player);
    opened = refit.opened(1);
    booked = refit.booked(2, "2025-09-13T15:00:00Z");
    try (Peers peers = new Peers(kafka)) {
      family.details().forEach(event -> peers.send(event, refit.correlationId));
      for (Event event : List.of(opened, booked)) {
        peers.send(event, refit.correlationId).send(event, refit.correlationId);
      }
    }
    await().atMost(SOON).until(() -> "sent".equals(state()));
  }

  @AfterEach
  void up() {
    SmtpServer.up();
  }

  private String state() {
    return Manager.json("/api/notices?refitCase=" + refit.id).getString("notices[0].state");
  }

  private String notice() {
    return Manager.json("/api/notices?refitCase=" + refit.id).getString("notices[0].notice");
  }

  @Test
  @DisplayName("is its causes, its words, every try and what came of it, on one page")
  void page() {
    String page = Manager.page("/notices/" + notice());
    assertThat(page)
        .contains("Cause: Re-fit opened", "Cause: Re-fit booked", "fitting")
        .contains(opened.id().toString(), booked.id().toString())
        .contains("Notice raised", "Try 1 by mail", "taken after", "Notice sent")
        .contains("do-not-wear-dated, version", "See it in the other language")
        .contains("/chains/" + refit.correlationId, "No use este casco");
    String link = ReceivedMail.of(SmtpServer.to(rosa).getFirst()).link();
    assertThat(page).contains("/notify/n/...").doesNotContain(link.substring(link.indexOf("/n/")));
  }

  @Test
  @DisplayName("can be taken along as JSON and as CSV, with ids and without names")
  void files() {
    JsonPath json = Manager.json("/files/notices/" + notice() + ".json");
    assertThat(json.getList("causes.type"))
        .containsExactly(
            "org.tapeline.fitting.refit-opened.v1", "org.tapeline.fitting.refit-booked.v1");
    assertThat(json.getList("tries.outcome")).containsExactly("taken");
    assertThat(Instant.parse(json.getString("notice.sentAt")))
        .isAfterOrEqualTo(Instant.parse(json.getString("notice.causedAt")));
    String csv = Manager.page("/files/notices/" + notice() + ".csv");
    assertThat(csv).startsWith("at,sort,what,detail,service,event\r\n").contains("Try 1 by mail");
    for (String file : List.of(json.prettify(), csv)) {
      assertThat(file).doesNotContain("Ida", rosa, "Quintanar", "Guardian of");
    }
  }

  @Test
  @DisplayName("is found by kind, urgency, state, channel and day, in the list and in files")
  void filters() {
    String all =
        "?kind=do-not-wear-refit&urgency=do-not-wear&state=sent&channel=mail&from=2020-01-01";
    assertThat(Manager.page("/notices" + all))
        .contains("/notify/notices/" + notice(), "From cause to sent", "By day")
        .contains("/notify/files/notices/notices.csv?kind=do-not-wear-refit&amp;urgency=");
    assertThat(Manager.page("/files/notices/notices.csv" + all))
        .startsWith("notice,kind,urgency,state")
        .contains(notice());
    assertThat(Manager.json("/files/notices/notices.json" + all).<String>getList("notice"))
        .contains(notice());
    for (String other :
        List.of(
            "?kind=refit-date",
            "?urgency=normal",
            "?state=cancelled",
            "?channel=text",
            "?to=2020-01-01")) {
      assertThat(Manager.page("/files/notices/notices.csv" + other)).doesNotContain(notice());
    }
  }

  @Test
  @DisplayName("is asked for in vain with a day that is none: said beside the field, and kept")
  void wrongDay() {
    String page = Manager.at("/notices?from=soon&state=sent").statusCode(400).extract().asString();
    assertThat(page).contains("value=\"soon\"", "Type a day such as 2025-09-13.", "By day");
    Manager.at("/files/notices/notices.csv?from=soon").statusCode(400);
    Manager.at("/files/notices/" + UUID.randomUUID() + ".json").statusCode(404);
  }

  @Test
  @DisplayName("is for the equipment manager alone")
  void managerOnly() {
    for (String path :
        List.of(
            "/notices",
            "/notices/" + notice(),
            "/files/notices/notices.csv",
            "/files/notices/notices.json",
            "/files/notices/" + notice() + ".csv",
            "/files/notices/" + notice() + ".json")) {
      given()
          .auth()
          .preemptive()
          .basic("coach.hawks", "larkfield")
          .get(path)
          .then()
          .statusCode(403);
    }
  }
}
