package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DemoChartsTest {

  @ParameterizedTest(name = "{1} is {2}")
  @DisplayName("The demo's charts put heads where the trade does (common practice, no source)")
  @CsvSource({"LV-0001, 21 in, youth-medium", "LV-0076, 22 7/8 in, youth-large"})
  void checkValues(String number, String head, String size) {
    JsonNode player = Tapeline.get("manager", "/sizing/api/players/" + number);
    assertThat(player.at("/head/readings").asText()).contains(head);
    assertThat(player.path("advice")).hasSize(2);
    assertThat(player.path("advice").findValuesAsText("size")).contains(size).doesNotContain("");
    player.path("advice").forEach(a -> assertThat(a.path("size").asText()).isEqualTo(size));
  }
}
