package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.retention.RetentionPolicy;
import org.tapeline.notify.retention.WhenItIsOldThenDelete;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@QuarkusTestResource(TextGateway.class)
@Tag("servers")
@DisplayName("What is kept of a person")
class RetentionTest {
  private static final Duration SOON = Duration.ofSeconds(20);
  private static final Duration A_MOMENT = Duration.ofMillis(800);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject DataSource database;
  @Inject WhenItIsOldThenDelete deleting;
  @Inject RetentionPolicy policy;

  private final int number = ThreadLocalRandom.current().nextInt(1_000_000, 9_999_999);
  private final String phone = "+1500" + number;
  private final String mail = "zelda." + number + "@families.example.org";

  /** Letters only, so that no id can hold it by chance. */
  private final String name = "Zelmira" + letters(number);

  private Peers peers;

  private static String letters(int number) {
    StringBuilder letters = new StringBuilder();
    String.valueOf(number).chars().forEach(c -> letters.append((char) (c - '0' + 'g')));
    return letters.toString();
  }

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  @Test
  @DisplayName("is nothing but ids and counts once they are erased, in any column and on any topic")
  void erased() {
    Family family = new Family(name).guardian("es", mail, phone).guardian("en", null, phone);
    Refit refit = told(family);
    publish(refit, refit.closed(3, "fitted"));
    await().atMost(SOON).until(() -> SmtpServer.to(mail).size() == 2);
    turnOffNews(ReceivedMail.of(SmtpServer.to(mail).get(1)));
    publish(refit, detailsThatCannotBeApplied(family));
    await()
        .atMost(SOON)
        .until(() -> EveryColumn.holding(database, mail).contains("inbox_parked.payload"));
    assertThat(EveryColumn.holding(database, name)).contains("notice_text.plain", "guardian.name");
    assertThat(EveryColumn.holding(database, phone)).contains("guardian.phone");
    String guardian = family.guardianId(0).toString();
    assertThat(EveryColumn.holding(database, guardian)).contains("opt_out.recipient");
    int notices = notices(refit);

    publish(refit, family.playerTombstone());
    publish(refit, family.guardianTombstone(0));
    publish(refit, family.guardianTombstone(1));
    publish(refit, family.guardianTombstone(1));

    for (String trace : List.of(name, mail, phone)) {
      await().atMost(SOON).until(() -> EveryColumn.holding(database, trace).isEmpty());
    }
    assertThat(EveryColumn.holding(database, guardian))
        .doesNotContain("opt_out.recipient", "bounce.recipient", "guardian.guardian");
    assertThat(notices(refit)).isEqualTo(notices).isPositive();
    assertThat(Manager.page("/notices/" + firstNotice(refit))).contains("The text was erased.");
    assertThat(onTopics()).doesNotContain(name, mail, phone);
  }

  @Test
  @DisplayName("goes by its days: words, tries and copies of who left; the counts stay")
  void byPolicy() {
    Family left = new Family(name).guardian("en", mail);
    Family stayed = new Family("Yara").guardian("en", "yara." + mail);
    Refit refit = told(left);
    publish(refit, refit.closed(3, "cancelled"));
    Event leaving =
        Event.of(
            "sizing.events",
            "org.tapeline.sizing.player-left.v1",
            "player-" + left.player,
            1,
            left.player,
            Map.of("player", left.player));
    publish(refit, leaving);
    Refit open = told(stayed);
    await()
        .atMost(SOON)
        .until(
            () ->
                EveryColumn.holding(database, left.player.toString())
                    .contains("player_left.player"));

    deleting.runAsOf(Instant.now());
    assertThat(EveryColumn.holding(database, name))
        .contains("player.given_name", "notice_text.plain");

    Instant later = Instant.now().plus(policy.tries()).plus(Duration.ofDays(1));
    deleting.runAsOf(later);
    deleting.runAsOf(later);
    assertThat(EveryColumn.holding(database, name)).isEmpty();
    assertThat(EveryColumn.holding(database, "Yara")).contains("player.given_name");
    JsonPath trace = Manager.json("/files/notices/" + firstNotice(refit) + ".json");
    assertThat(trace.getList("tries")).isEmpty();
    assertThat(trace.getInt("notice.attempts")).isEqualTo(1);
    assertThat(trace.getString("notice.sentAt")).isNotNull();
    assertThat(trace.getString("causes[0].type")).isNull();
    assertThat(Manager.page("/notices/" + firstNotice(refit)))
        .contains("no more is known of it", "Notice sent");
    assertThat(notices(open)).isEqualTo(1);
    assertThat(Manager.page("/retention"))
        .contains("Words of notices", "Contacts of who left", "Older than");
  }

  private Refit told(Family family) {
    Refit refit = new Refit(family.player);
    family.details().forEach(event -> publish(refit, event));
    publish(refit, refit.opened(1));
    publish(refit, refit.booked(2, "2035-09-15T15:00:00Z"));
    await()
        .atMost(SOON)
        .until(
            () -> {
              List<String> states =
                  Manager.json("/api/notices?refitCase=" + refit.id).getList("notices.state");
              return !states.isEmpty() && states.stream().allMatch("sent"::equals);
            });
    return refit;
  }

  /** Every event comes twice. */
  private void publish(Refit refit, Event event) {
    peers.sendTwice(refit.correlationId, event);
  }

  private static void turnOffNews(ReceivedMail mail) {
    String link =
        mail.plain().lines().filter(l -> l.contains("/unsubscribe/")).findFirst().orElseThrow();
    given()
        .formParam("List-Unsubscribe", "One-Click")
        .post(link.strip().substring(link.strip().indexOf("/unsubscribe/")))
        .then()
        .statusCode(200);
  }

  /** Lies parked as it came. */
  private Event detailsThatCannotBeApplied(Family family) {
    UUID guardian = family.guardianId(0);
    return new Event(
        "people",
        "org.tapeline.sizing.guardian-details.v1",
        "guardian-details-" + guardian,
        5,
        guardian.toString(),
        UuidV7.next(),
        EventJson.MAPPER.valueToTree(
            Map.of("guardian", guardian, "name", name, "email", mail, "players", "none")));
  }

  private static int notices(Refit refit) {
    return Manager.json("/api/notices?refitCase=" + refit.id).getList("notices").size();
  }

  private static String firstNotice(Refit refit) {
    return Manager.json("/api/notices?refitCase=" + refit.id).getString("notices[0].notice");
  }

  private String onTopics() {
    StringBuilder all = new StringBuilder();
    try (TestKafka reader = new TestKafka(kafka)) {
      for (String topic :
          List.of("notify.events", "fitting.events", "inventory.events", "sizing.events")) {
        reader
            .await(topic, Integer.MAX_VALUE, A_MOMENT, message -> true)
            .forEach(m -> all.append(m.key()).append(m.headers()).append(m.data()).append('\n'));
      }
    }
    assertThat(all).contains("notice-raised");
    return all.toString();
  }
}
