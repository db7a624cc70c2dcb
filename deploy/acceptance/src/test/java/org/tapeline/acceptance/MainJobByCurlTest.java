package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("main-job")
class MainJobByCurlTest {
  private static final String PARENT = "helena.almendral.1@example.org";
  private static final String PLAYER = "LV-0001";

  @Test
  @DisplayName(
      "The README's lines take a player from the readings to a re-fit, a mail and a restock")
  void theLinesOfTheReadme() {
    Readme readme = new Readme();

    JsonNode imported = Tapeline.json(readme.type("/sizing/api/import/players"));
    assertThat(imported.path("rejected").asInt(-1)).isZero();
    assertThat(imported.path("unchanged").asInt()).isGreaterThanOrEqualTo(120);

    JsonNode sized = Tapeline.json(readme.type("/readings"));
    // Common practice in the trade, no published source: 21 in belongs in a youth medium.
    assertThat(sized.findValuesAsText("size")).contains("youth-medium");

    JsonNode session = Tapeline.json(readme.type("/fitting/api/sessions"));
    readme.put("SESSION", session.path("session").asText());
    String tag = tagOf(Tapeline.json(readme.type("state=available")), "youth-medium");
    readme.put("TAG", tag);
    JsonNode helmetOn = Tapeline.json(readme.type("/helmet"));
    assertThat(helmetOn.path("tag").asText()).isEqualTo(tag);
    JsonNode answered = Tapeline.json(readme.type("/checks"));
    assertThat(answered.path("answers").path("snug").asText()).isEqualTo("fail");

    int mailsBefore = Post.to(PARENT).size();
    JsonNode failed = Tapeline.json(readme.type("/fail"));
    assertThat(failed.path("status").asText()).isEqualTo("failed");
    Patience.soon()
        .untilAsserted(
            () -> {
              assertThat(openRefit()).isPresent();
              assertThat(openRefit().get().path("booking").path("fitDay").isMissingNode())
                  .as("the re-fit is booked on a fit day")
                  .isFalse();
            });
    Patience.soon().untilAsserted(() -> assertThat(Post.to(PARENT)).hasSize(mailsBefore + 1));
    Post.Mail mail = Post.to(PARENT).getFirst();
    assertThat(mail.attachment()).contains("BEGIN:VCALENDAR", "DTSTART");
    assertThat(
            Tapeline.get("fitter.north", "/fitting/api/players/" + PLAYER)
                .at("/state/code")
                .asText())
        .isEqualTo("do-not-wear");

    readme.type("/damage");
    Patience.soon()
        .untilAsserted(
            () ->
                assertThat(
                        Tapeline.get("depot", "/inventory/api/helmets/" + tag)
                            .findValuesAsText("state"))
                    .contains("quarantined"));

    JsonNode request = Tapeline.json(readme.type("/inventory/api/restock")).path(0);
    readme.put("REQUEST", request.path("request").asText());
    assertThat(Tapeline.json(readme.type("/pick")).findValuesAsText("state")).contains("picked");
    assertThat(Tapeline.json(readme.type("/ship")).findValuesAsText("state")).contains("shipped");
    assertThat(Tapeline.json(readme.type("/receive")).findValuesAsText("state"))
        .contains("received");
    assertThat(readme.isAtItsEnd()).isTrue();
  }

  private static Optional<JsonNode> openRefit() {
    JsonNode player = Tapeline.get("fitter.north", "/fitting/api/players/" + PLAYER);
    return list(Tapeline.get("fitter.north", "/fitting/api/refits")).stream()
        .filter(refit -> refit.path("player").equals(player.path("player")))
        .findFirst();
  }

  private static String tagOf(JsonNode helmets, String size) {
    return list(helmets).stream()
        .filter(helmet -> helmet.path("size").asText().equals(size))
        .findFirst()
        .orElseThrow()
        .path("tag")
        .asText();
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }
}
