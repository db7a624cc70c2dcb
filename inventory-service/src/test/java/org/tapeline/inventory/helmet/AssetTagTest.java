package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An asset tag")
class AssetTagTest {

  @Test
  @DisplayName("has the check character of ISO 7064 MOD 37,36")
  void published() {
    assertThat(AssetTag.checkCharacter("A12425GABC1234002")).isEqualTo('M');
    assertThat(AssetTag.withCheck("A12425GABC1234002").value()).isEqualTo("A12425GABC1234002M");
  }

  @Test
  @DisplayName("with another last character is refused")
  void refused() {
    assertThatThrownBy(() -> new AssetTag("A12425GABC1234002N"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Read the tag again");
  }

  @Test
  @DisplayName("that is no tag is refused")
  void noTag() {
    assertThatThrownBy(() -> new AssetTag("a b")).hasMessageContaining("capital letters");
  }
}
