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
  private static final Code SHELL = code("shell");
  private static final Code OTHER = code("other");
  private static final Code CRACK = code("crack");
  private static final Code UNSURE = code("unsure");

  private static Code code(String code, String... at) {
    return new Code(code, "said", "means", List.of(at));
  }

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
  @DisplayName("take out of use what could change how the helmet works, and what nobody is sure of")
  void structural() throws IOException {
    DamageRules rules = inForce();
    List<String> kinds =
        List.of(
            "missing", "loose", "torn", "crack", "dent", "altered", "chemical", "paint", "unsure");
    for (Code where : rules.where()) {
      for (String what : kinds) {
        assertThat(rules.knowsWhat(what)).as(what).isTrue();
        assertThat(rules.structural(where.code(), what)).as(where + " " + what).isTrue();
      }
    }
  }

  @Test
  @DisplayName("take out of use a label that cannot be read, and whatever is elsewhere")
  void label() throws IOException {
    DamageRules rules = inForce();
    for (Code what : rules.what()) {
      assertThat(rules.structural("label", what.code())).as(what.code()).isTrue();
      assertThat(rules.structural("other", what.code())).as(what.code()).isTrue();
    }
  }

  @Test
  @DisplayName("take out of use what they do not name")
  void inDoubt() throws IOException {
    assertThat(inForce().structural("roof", "scratch")).isTrue();
  }

  @Test
  @DisplayName("offer at each place what can be there, and always \"not sure\"")
  void offered() throws IOException {
    DamageRules rules = inForce();
    for (Code where : rules.where()) {
      assertThat(rules.whatAt(where.code())).extracting(Code::code).contains("unsure", "crack");
    }
    assertThat(rules.whatAt("shell")).extracting(Code::code).doesNotContain("leaks");
    assertThat(rules.whatAt("valve")).extracting(Code::code).contains("leaks");
    assertThat(rules.whatAt("other")).hasSameSizeAs(rules.what());
  }

  @Test
  @DisplayName("offer every cosmetic kind at its place")
  void cosmeticIsOffered() throws IOException {
    DamageRules rules = inForce();
    for (Pair pair : rules.cosmetic()) {
      assertThat(rules.whatAt(pair.where())).extracting(Code::code).contains(pair.what());
    }
  }

  @Test
  @DisplayName("that name what they do not list, or call doubt cosmetic, are refused")
  void refused() {
    List<Code> where = List.of(SHELL, OTHER);
    List<Code> what = List.of(CRACK, UNSURE);
    assertThatThrownBy(() -> rules(1, where, what, new Pair("shell", "dirt")))
        .hasMessageContaining("Not listed");
    assertThatThrownBy(() -> rules(1, where, what, new Pair("shell", "unsure")))
        .hasMessageContaining("In doubt");
    assertThatThrownBy(() -> rules(1, where, what, new Pair("other", "crack")))
        .hasMessageContaining("In doubt");
    assertThatThrownBy(() -> rules(1, where, List.of(CRACK))).hasMessageContaining("unsure");
    assertThatThrownBy(() -> rules(1, where, List.of(code("crack", "roof"), UNSURE)))
        .hasMessageContaining("no");
    assertThatThrownBy(() -> rules(0, where, what)).hasMessageContaining("version");
  }

  private static DamageRules rules(int version, List<Code> where, List<Code> what, Pair... noted) {
    return new DamageRules(version, "test", where, what, List.of(noted));
  }
}
