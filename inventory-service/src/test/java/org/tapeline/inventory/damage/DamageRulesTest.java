package org.tapeline.inventory.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.damage.DamageRules.Code;
import org.tapeline.inventory.damage.DamageRules.Pair;
import org.tapeline.journal.EventJson;

@DisplayName("The rules of damage")
class DamageRulesTest {

  private static DamageRules inForce() throws IOException {
    return EventJson.MAPPER.readValue(
        DamageRules.class.getResourceAsStream("/damage/rules.json"), DamageRules.class);
  }

  @Test
  @DisplayName("note a scratch on the shell")
  void cosmetic() throws IOException {
    assertThat(inForce().structural("shell", "scratch")).isFalse();
  }

  @Test
  @DisplayName("take out of use what is missing, loose, torn or cracked, and every lost label")
  void structural() throws IOException {
    DamageRules rules = inForce();
    for (Code where : rules.where()) {
      for (String what : List.of("missing", "loose", "torn", "crack", "unsure")) {
        assertThat(rules.structural(where.code(), what)).as(where + " " + what).isTrue();
      }
    }
  }

  @Test
  @DisplayName("take out of use what they do not name")
  void inDoubt() throws IOException {
    assertThat(inForce().structural("other", "scratch")).isTrue();
  }

  @Test
  @DisplayName("that name what they do not list are refused")
  void refused() {
    List<Code> where = List.of(new Code("shell", "Shell"));
    List<Code> what = List.of(new Code("crack", "Cracked"));
    assertThatThrownBy(
            () -> new DamageRules(1, "test", where, what, List.of(new Pair("shell", "dirt"))))
        .hasMessageContaining("Not listed");
    assertThatThrownBy(() -> new DamageRules(0, "test", where, what, List.of()))
        .hasMessageContaining("version");
  }
}
