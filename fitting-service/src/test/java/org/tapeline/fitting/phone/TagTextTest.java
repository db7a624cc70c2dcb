package org.tapeline.fitting.phone;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A tag typed on a phone")
class TagTextTest {

  @Test
  @DisplayName("has the check character of the standard's example")
  void reference() {
    assertThat(TagText.checkCharacter("A12425GABC1234002")).isEqualTo('M');
    assertThat(TagText.problem("a12425 gabc1234002 m")).isEmpty();
  }

  @Test
  @DisplayName("with one wrong character, or two that changed places, is noticed")
  void wrong() {
    assertThat(TagText.problem("A12425GABC1234003M")).contains("check character");
    assertThat(TagText.problem("A12425GABC1243002M")).contains("check character");
    assertThat(TagText.problem("A-1")).contains("letters and digits");
    assertThat(TagText.problem(" ")).contains("Enter or scan");
  }
}
