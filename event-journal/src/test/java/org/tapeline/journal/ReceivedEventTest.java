package org.tapeline.journal;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ReceivedEventTest {

  record Player(LocalDate birthDate) {}

  record Family(List<Player> players) {}

  @Test
  @DisplayName("Content that does not fit is told by its place, and not by what is written there")
  void doesNotFit() {
    JsonNode data =
        EventJson.MAPPER.valueToTree(
            Map.of("players", List.of(Map.of("birthDate", "30 April 2015"))));
    UUID id = UUID.randomUUID();
    ReceivedEvent event =
        new ReceivedEvent(
            "people",
            id,
            "org.tapeline.sizing.family.v1",
            "family-1",
            1,
            "1",
            Instant.now(),
            id,
            id,
            data);
    assertThatThrownBy(() -> event.as(Family.class))
        .isInstanceOf(IllegalArgumentException.class)
        .hasNoCause()
        .hasMessage("org.tapeline.sizing.family.v1 does not fit at players[0].birthDate");
  }
}
