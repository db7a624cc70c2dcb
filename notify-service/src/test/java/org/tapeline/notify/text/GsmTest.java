package org.tapeline.notify.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Facts of 3GPP TS 23.038 and TS 23.040, from memory. */
@DisplayName("A text message")
class GsmTest {

  @Test
  @DisplayName("has 127 characters in its alphabet beside the escape, and 10 more behind it")
  void alphabet() {
    long basic = count(0x10000, false);
    assertThat(basic).isEqualTo(127);
    assertThat(count(0x10000, true) - basic).isEqualTo(10);
    assertThat(Gsm.has("ñüéà¿¡ÑÜÉäöß")).isTrue();
    for (String missing : new String[] {"á", "í", "ó", "ú", "Á", "ç", "`", "王"}) {
      assertThat(Gsm.has(missing)).as(missing).isFalse();
    }
  }

  private static long count(int below, boolean extended) {
    long count = 0;
    for (int c = 0; c < below; c++) {
      String one = Character.toString(c);
      boolean two = Gsm.has(c) && Gsm.segments(one.repeat(81)) == 2;
      count += Gsm.has(c) && (extended || !two) ? 1 : 0;
    }
    return count;
  }

  @Test
  @DisplayName("holds 160 characters, and 153 in each segment of more than one")
  void defaultAlphabet() {
    assertThat(Gsm.segments("")).isZero();
    assertThat(Gsm.segments("a".repeat(160))).isEqualTo(1);
    assertThat(Gsm.segments("a".repeat(161))).isEqualTo(2);
    assertThat(Gsm.segments("a".repeat(306))).isEqualTo(2);
    assertThat(Gsm.segments("a".repeat(307))).isEqualTo(3);
  }

  @Test
  @DisplayName("counts a character of the extension twice and never cuts it in two")
  void extension() {
    assertThat(Gsm.segments("€".repeat(80))).isEqualTo(1);
    assertThat(Gsm.segments("€".repeat(81))).isEqualTo(2);
    assertThat(Gsm.segments("a".repeat(152) + "€" + "a".repeat(151))).isEqualTo(2);
    assertThat(Gsm.segments("a".repeat(152) + "€" + "a".repeat(152))).isEqualTo(3);
  }

  @Test
  @DisplayName("holds 70 with one letter outside the alphabet, and 67 in each of more segments")
  void ucs2() {
    assertThat(Gsm.segments("á".repeat(70))).isEqualTo(1);
    assertThat(Gsm.segments("á" + "a".repeat(70))).isEqualTo(2);
    assertThat(Gsm.segments("á".repeat(134))).isEqualTo(2);
    assertThat(Gsm.segments("á".repeat(135))).isEqualTo(3);
    String helmet = Character.toString(0x1F3C8);
    assertThat(Gsm.segments(helmet.repeat(35))).isEqualTo(1);
    assertThat(Gsm.segments("a".repeat(66) + helmet + "a".repeat(65))).isEqualTo(2);
    assertThat(Gsm.segments("a".repeat(66) + helmet + "a".repeat(66))).isEqualTo(3);
  }

  @Test
  @DisplayName("leaves accents off where the alphabet lacks the letter, and keeps the others")
  void plain() {
    assertThat(Gsm.plain("El sábado, José: ¿el niño? ¡Sí! “ok” – año…"))
        .isEqualTo("El sabado, José: ¿el niño? ¡Si! \"ok\" - año...");
    assertThat(Gsm.plain("王")).isEqualTo("王");
  }
}
