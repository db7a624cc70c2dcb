package org.tapeline.fitting.fitday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.fitday.FeedKey.Scope;

@DisplayName("A calendar link")
class FeedKeyTest {
  private static final FeedKey KEY = key("a-key-for-tests-that-is-32-characters-or-more");
  private static final Scope TWO = new Scope(false, Set.of("NORTH", "RIVER"));

  private static FeedKey key(String secret) {
    return new FeedKey(secret.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  @DisplayName("shows the fields that it was made for, and no other")
  void opens() {
    Scope scope = KEY.open(KEY.token(TWO)).orElseThrow();
    assertThat(scope.shows("NORTH")).isTrue();
    assertThat(scope.shows("RIVER")).isTrue();
    assertThat(scope.shows("SOUTH")).isFalse();
    assertThat(scope.shows("*")).isFalse();
    assertThat(KEY.open(KEY.token(Scope.ALL_FIELDS)).orElseThrow().shows("SOUTH")).isTrue();
    Scope none = KEY.open(KEY.token(new Scope(false, Set.of()))).orElseThrow();
    assertThat(none.shows("NORTH")).isFalse();
  }

  @Test
  @DisplayName("opens nothing when any bit of it is changed, cut off or added")
  void changed() {
    byte[] token = Base64.getUrlDecoder().decode(KEY.token(TWO));
    for (int at = 0; at < token.length; at++) {
      byte[] other = token.clone();
      other[at] ^= 1;
      assertThat(KEY.open(Base64.getUrlEncoder().encodeToString(other)))
          .as("byte %d", at)
          .isEmpty();
    }
    assertThat(KEY.open(KEY.token(TWO) + "AAAA")).isEmpty();
    assertThat(KEY.open(KEY.token(TWO).substring(4))).isEmpty();
    assertThat(KEY.open("")).isEmpty();
    assertThat(KEY.open("not base 64 !")).isEmpty();
  }

  @Test
  @DisplayName("ends with its key, which is no shorter than 32 bytes")
  void otherKey() {
    assertThat(key("another-key-that-is-32-characters-or-more").open(KEY.token(TWO))).isEmpty();
    byte[] tooShort = new byte[31];
    assertThatThrownBy(() -> new FeedKey(tooShort)).isInstanceOf(IllegalArgumentException.class);
  }
}
