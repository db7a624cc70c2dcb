package org.tapeline.inventory.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.damage.InspectionPolicy.Finding;
import org.tapeline.inventory.damage.InspectionPolicy.Wrong;
import org.tapeline.journal.EventJson;

@DisplayName("An inspection")
class InspectionPolicyTest {
  private static final List<String> NO_PART = List.of();

  private static InspectionPolicy inForce() throws IOException {
    return EventJson.MAPPER.readValue(
        InspectionPolicy.class.getResourceAsStream("/damage/inspection.json"),
        InspectionPolicy.class);
  }

  @Test
  @DisplayName("lets back what was cleaned, tightened, or had nothing")
  void back() throws IOException {
    for (String finding : List.of("nothing-found", "surface-only", "cleaned", "tightened")) {
      assertThat(inForce().check(true, List.of(finding), NO_PART)).as(finding).isEmpty();
    }
  }

  @Test
  @DisplayName("never lets back what is cracked, altered, without its label, or not sure")
  void never() throws IOException {
    List<String> forbidden = List.of("cracked", "deformed", "altered", "label-missing", "unsure");
    for (String finding : forbidden) {
      List<String> with = List.of("cleaned", finding);
      assertThat(inForce().check(true, with, NO_PART)).as(finding).hasSize(1);
      assertThat(inForce().check(true, with, NO_PART).getFirst().field()).isEqualTo("outcome");
      assertThat(inForce().check(false, with, NO_PART)).as(finding).isEmpty();
    }
  }

  @Test
  @DisplayName("in which a part was replaced names the part, and no other does")
  void parts() throws IOException {
    assertThat(inForce().check(true, List.of("part-replaced"), NO_PART))
        .extracting(Wrong::field)
        .containsExactly("parts");
    assertThat(inForce().check(true, List.of("part-replaced"), List.of("valve"))).isEmpty();
    assertThat(inForce().check(true, List.of("cleaned"), List.of("valve")))
        .extracting(Wrong::field)
        .containsExactly("parts");
  }

  @Test
  @DisplayName(
      "with a finding that is not listed, or with nothing found and yet something, is refused")
  void nonsense() throws IOException {
    assertThat(inForce().check(true, List.of("haunted"), NO_PART)).hasSize(1);
    assertThat(inForce().check(false, List.of("nothing-found", "cracked"), NO_PART)).hasSize(1);
  }

  @Test
  @DisplayName("needs findings that say why one forbids the way back")
  void policy() {
    Finding back = new Finding("cleaned", "Cleaned", "", true, "", false, false);
    Finding silent = new Finding("cracked", "Cracked", "", false, " ", false, false);
    assertThatThrownBy(() -> new InspectionPolicy(1, "test", List.of(back, silent)))
        .hasMessageContaining("not why");
    assertThatThrownBy(() -> new InspectionPolicy(1, "test", List.of()))
        .hasMessageContaining("back to stock");
    assertThatThrownBy(() -> new InspectionPolicy(1, "test", List.of(back, back)))
        .hasMessageContaining("twice");
    assertThatThrownBy(() -> new InspectionPolicy(0, "test", List.of(back)))
        .hasMessageContaining("version");
  }
}
