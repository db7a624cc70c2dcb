package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A tag that was typed with a slip")
class NearTagsTest {
  private static final String TAG = AssetTag.withCheck("LV900047").value();

  @Test
  @DisplayName("is found though any one character is another one")
  void another() {
    for (int i = 0; i < TAG.length(); i++) {
      char wrong = TAG.charAt(i) == '7' ? '8' : '7';
      String typed = TAG.substring(0, i) + wrong + TAG.substring(i + 1);
      assertThat(NearTags.of(typed)).as(typed).contains(TAG);
    }
  }

  @Test
  @DisplayName("is found though a character is missing, doubled or changed places")
  void missingDoubledSwapped() {
    assertThat(NearTags.of(TAG.substring(0, 4) + TAG.substring(5))).contains(TAG);
    assertThat(NearTags.of(TAG.substring(0, 5) + TAG.charAt(4) + TAG.substring(5))).contains(TAG);
    assertThat(NearTags.of("VL900047" + TAG.substring(8))).contains(TAG);
    assertThat(NearTags.of("LV900047")).contains(TAG);
  }

  @Test
  @DisplayName("is found though letters were read for several digits, in any writing")
  void lookAlikes() {
    assertThat(NearTags.of(TAG.replace('0', 'O'))).contains(TAG);
    assertThat(NearTags.of(" lv-9OOO.47 " + TAG.substring(8))).contains(TAG);
  }

  @Test
  @DisplayName("has few others near it, each with a check character that fits")
  void few() {
    String typed = "LV900147" + TAG.substring(8);
    assertThat(NearTags.of(typed)).hasSizeLessThan(60).doesNotContain(typed);
    assertThat(NearTags.of("x!")).isEmpty();
  }
}
