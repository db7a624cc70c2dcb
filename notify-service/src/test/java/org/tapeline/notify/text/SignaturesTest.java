package org.tapeline.notify.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A signature")
class SignaturesTest {
  private static final Signatures KEY = new Signatures("0123456789abcdef0123456789abcdef");
  private static final Instant NOW = Instant.ofEpochSecond(1_757_700_000);
  private static final Duration WINDOW = Duration.ofMinutes(5);

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  @DisplayName("fits its body, time and key and nothing else")
  void fits() {
    String signature = KEY.sign("1757700000", bytes("{}"));
    assertThat(signature).matches("[0-9a-f]{64}");
    assertThat(KEY.genuine("1757700000", bytes("{}"), signature)).isTrue();
    assertThat(KEY.genuine("1757700000", bytes("{}"), signature.toUpperCase(java.util.Locale.ROOT)))
        .isTrue();
    assertThat(KEY.genuine("1757700001", bytes("{}"), signature)).isFalse();
    assertThat(KEY.genuine("1757700000", bytes("{ }"), signature)).isFalse();
    assertThat(KEY.genuine("1757700000", bytes("{}"), "")).isFalse();
    Signatures other = new Signatures("fedcba9876543210fedcba9876543210");
    assertThat(other.genuine("1757700000", bytes("{}"), signature)).isFalse();
  }

  @Test
  @DisplayName("is good for five minutes on both sides of its time")
  void window() {
    assertThat(Signatures.fresh("1757699700", NOW, WINDOW)).isTrue();
    assertThat(Signatures.fresh("1757699699", NOW, WINDOW)).isFalse();
    assertThat(Signatures.fresh("1757700300", NOW, WINDOW)).isTrue();
    assertThat(Signatures.fresh("1757700301", NOW, WINDOW)).isFalse();
    assertThat(Signatures.fresh("", NOW, WINDOW)).isFalse();
    assertThat(Signatures.fresh("yesterday", NOW, WINDOW)).isFalse();
  }

  @Test
  @DisplayName("with a key shorter than its hash is refused")
  void shortKey() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Signatures("too short"));
  }
}
