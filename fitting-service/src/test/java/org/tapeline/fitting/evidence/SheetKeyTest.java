package org.tapeline.fitting.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The code on a sheet")
class SheetKeyTest {
  private static final SheetKey KEY = key("one key of at least thirty-two bytes");
  private static final SheetKey.Reference SHEET =
      new SheetKey.Reference(
          SomeEvidence.SESSION,
          Fingerprint.of(SomeEvidence.with("LV0001", Optional.empty())),
          Instant.parse("2026-08-21T08:00:00Z"));

  private static SheetKey key(String secret) {
    return new SheetKey(secret.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  @DisplayName("says which sign-off, which facts and when it was printed")
  void opens() {
    assertThat(KEY.open(KEY.token(SHEET))).contains(SHEET);
  }

  @Test
  @DisplayName("opens nothing when any letter of it was changed, or with another key")
  void altered() {
    String token = KEY.token(SHEET);
    for (int i = 0; i < token.length(); i++) {
      char other = token.charAt(i) == 'A' ? 'B' : 'A';
      assertThat(KEY.open(token.substring(0, i) + other + token.substring(i + 1)))
          .as("letter %d", i)
          .isEmpty();
    }
    assertThat(key("another key of at least thirty-two bytes").open(token)).isEmpty();
  }

  @Test
  @DisplayName("opens nothing when it is no code at all")
  void nonsense() {
    for (String typed : new String[] {"", "A", "not base64!", KEY.token(SHEET) + "AAAA"}) {
      assertThat(KEY.open(typed)).as(typed).isEmpty();
    }
  }

  @Test
  @DisplayName("is not made with a short key")
  void shortKey() {
    assertThatThrownBy(() -> key("short")).isInstanceOf(IllegalArgumentException.class);
  }
}
