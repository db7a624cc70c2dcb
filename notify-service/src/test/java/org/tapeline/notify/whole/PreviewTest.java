package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Template;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@DisplayName("The preview of words")
class PreviewTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Test
  @DisplayName("shows every template in each language, as mail and as text message")
  void everyTemplate() {
    String list = Manager.page("/words");
    for (String template : Template.NAMES) {
      for (Language language : Language.values()) {
        String path = "/words/" + template + "?language=" + language.code();
        assertThat(list).contains("/notify" + path);
        assertThat(Manager.page(path))
            .contains("srcdoc=\"&lt;!DOCTYPE html&gt;", "segment", "version")
            .contains(language == Language.ENGLISH ? "Flesch-Kincaid" : "INFLESZ");
      }
    }
  }

  @Test
  @DisplayName("shows the facts of a real notice in the other language, with a link that is dead")
  void otherLanguage() {
    String rosa = "rosa." + UUID.randomUUID() + "@families.example.org";
    Family family = new Family("Lúa").guardian("es", rosa);
    Refit refit = new Refit(family.player);
    try (Peers peers = new Peers(kafka)) {
      family.details().forEach(event -> peers.send(event, refit.correlationId));
      peers.send(refit.opened(1), refit.correlationId);
      peers.send(refit.booked(2, "2025-09-13T15:00:00Z"), refit.correlationId);
      await().atMost(Duration.ofSeconds(20)).until(() -> SmtpServer.to(rosa).size() == 1);
    }
    String notice =
        Manager.json("/api/notices?refitCase=" + refit.id).getString("notices[0].notice");
    String page = Manager.page("/words/do-not-wear-dated?language=en&notice=" + notice);
    assertThat(page)
        .contains("Do not wear: Lúa&#39;s helmet. Re-fit on Saturday, September 13")
        .contains("The helmet of Lúa did not pass its fit check.")
        .contains("/notify/n/xxxx");
    String real = ReceivedMail.of(SmtpServer.to(rosa).getFirst()).link();
    assertThat(page).doesNotContain(real.substring(real.indexOf("/n/")));
    assertThat(Manager.page("/words/refit-date?notice=" + notice)).contains("The sample is shown");
  }

  @Test
  @DisplayName("is for the equipment manager, and says what to do about what it does not know")
  void refused() {
    given()
        .auth()
        .preemptive()
        .basic("coach.hawks", "larkfield")
        .get("/words")
        .then()
        .statusCode(403);
    Manager.at("/words/no-such-words").statusCode(404);
    Manager.at("/words/refit-date?language=fr").statusCode(400);
    Manager.at("/words/refit-date?notice=1").statusCode(400);
  }
}
