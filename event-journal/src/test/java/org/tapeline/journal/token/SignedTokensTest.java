package org.tapeline.journal.token;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A signed token")
class SignedTokensTest {
  private static final byte[] KEY = bytes("one key of at least thirty-two bytes");
  private static final SignedTokens TOKENS = new SignedTokens(KEY, "one purpose");

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  @DisplayName("gives back its content, also an empty one")
  void opens() {
    assertThat(TOKENS.open(TOKENS.seal(bytes("NORTH RIVER")))).contains(bytes("NORTH RIVER"));
    assertThat(TOKENS.open(TOKENS.seal(new byte[0]))).contains(new byte[0]);
  }

  @Test
  @DisplayName("opens nothing for another purpose or with another key")
  void otherPurpose() {
    String token = TOKENS.seal(bytes("NORTH"));
    assertThat(new SignedTokens(KEY, "another purpose").open(token)).isEmpty();
    byte[] other = bytes("another key of at least thirty-two bytes");
    assertThat(new SignedTokens(other, "one purpose").open(token)).isEmpty();
  }

  @Test
  @DisplayName("takes the key of the setting, and says so when it makes one")
  void key() {
    List<String> said = new ArrayList<>();
    assertThat(SignedTokens.key(Optional.of("a setting"), () -> said.add("made")))
        .isEqualTo(bytes("a setting"));
    assertThat(said).isEmpty();
    byte[] made = SignedTokens.key(Optional.empty(), () -> said.add("made"));
    assertThat(made).hasSize(SignedTokens.LEAST_BYTES);
    assertThat(said).containsExactly("made");
    assertThat(SignedTokens.key(Optional.empty(), () -> {})).isNotEqualTo(made);
  }

  @Test
  @DisplayName("is not made with a short key")
  void shortKey() {
    assertThatThrownBy(() -> new SignedTokens(bytes("short"), "one purpose"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("32 bytes");
  }
}
