package org.tapeline.inventory.reconditioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.journal.EventJson;

@DisplayName("The policy of reconditioning")
class ReconditioningPolicyTest {

  @Test
  @DisplayName("stands in its file, with a source")
  void file() throws IOException {
    assertThat(read(onFile()).source()).contains("common practice");
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "turnaroundWeeks, 0",
    "turnaroundWeeks, 31",
    "mostPerBatch, 0",
    "spareShare, 1.5",
    "costCents, -1",
    "lastAgeNearDays, -1",
    "version, 0"
  })
  @DisplayName("is refused with a figure that cannot be")
  void refused(String figure, String value) throws IOException {
    ObjectNode policy = onFile();
    policy.set(figure, EventJson.MAPPER.readTree(value));
    assertThatThrownBy(() -> read(policy)).hasMessageContaining("reconditioning.json");
  }

  @Test
  @DisplayName("knows seasons within a year, and the one that comes next")
  void season() {
    Season season = Season.of("08-01", "11-15");
    assertThat(season.holds(LocalDate.of(2026, 11, 15))).isTrue();
    assertThat(season.holds(LocalDate.of(2026, 11, 16))).isFalse();
    assertThat(season.endFrom(LocalDate.of(2026, 11, 16))).isEqualTo("2027-11-15");
    assertThat(season.startFrom(LocalDate.of(2026, 9, 1))).isEqualTo("2026-08-01");
    assertThatIllegalArgumentException().isThrownBy(() -> Season.of("11-15", "02-01"));
  }

  private static ObjectNode onFile() throws IOException {
    try (InputStream file =
        ReconditioningPolicyTest.class.getResourceAsStream("/policy/reconditioning.json")) {
      return (ObjectNode) EventJson.MAPPER.readTree(file);
    }
  }

  private static ReconditioningPolicy read(ObjectNode policy) throws IOException {
    return EventJson.MAPPER.treeToValue(policy, ReconditioningPolicy.class);
  }
}
