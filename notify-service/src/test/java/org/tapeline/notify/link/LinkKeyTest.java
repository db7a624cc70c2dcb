package org.tapeline.notify.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A parent's link")
class LinkKeyTest {
  private static final UUID NOTICE = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d21");
  private static final UUID OTHER = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d22");
  private static final Instant NOW = Instant.parse("2025-09-12T17:00:00Z");
  private static final Instant UNTIL = NOW.plusSeconds(3600);
  private static final LinkKey KEY = key("a key of the association, 32 bytes");

  private static LinkKey key(String secret) {
    return new LinkKey(secret.getBytes(StandardCharsets.UTF_8));
  }

  private static String changedAt(String token, int index) {
    byte[] bytes = Base64.getUrlDecoder().decode(token);
    bytes[index] ^= 1;
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  @Test
  @DisplayName("opens its own notice")
  void opens() {
    assertThat(KEY.open(KEY.token(NOTICE, UNTIL), NOW)).contains(NOTICE);
  }

  @Test
  @DisplayName("opens nothing from its end on")
  void expires() {
    String token = KEY.token(NOTICE, UNTIL);
    assertThat(KEY.open(token, UNTIL.minusSeconds(1))).contains(NOTICE);
    assertThat(KEY.open(token, UNTIL)).isEmpty();
  }

  @Test
  @DisplayName("opens nothing when any one byte of it was changed")
  void forged() {
    String token = KEY.token(NOTICE, UNTIL);
    int bytes = Base64.getUrlDecoder().decode(token).length;
    for (int i = 0; i < bytes; i++) {
      assertThat(KEY.open(changedAt(token, i), NOW)).as("byte %d", i).isEmpty();
    }
  }

  @Test
  @DisplayName("cannot be bent to another notice or a later end")
  void bent() {
    String own = KEY.token(NOTICE, UNTIL);
    String other = KEY.token(OTHER, UNTIL);
    String later = KEY.token(NOTICE, UNTIL.plusSeconds(3600));
    // The first 33 characters stand for the head less its last bits, the rest for the signature.
    assertThat(KEY.open(other.substring(0, 33) + own.substring(33), NOW)).isEmpty();
    assertThat(KEY.open(later.substring(0, 33) + own.substring(33), NOW)).isEmpty();
  }

  @Test
  @DisplayName("made with another key opens nothing")
  void otherKey() {
    String foreign = key("another key of somebody, 32 bytes").token(NOTICE, UNTIL);
    assertThat(KEY.open(foreign, NOW)).isEmpty();
  }

  @Test
  @DisplayName("that is cut, lengthened or no token at all opens nothing")
  void rubbish() {
    String token = KEY.token(NOTICE, UNTIL);
    assertThat(KEY.open("", NOW)).isEmpty();
    assertThat(KEY.open("notice", NOW)).isEmpty();
    assertThat(KEY.open("*%/..", NOW)).isEmpty();
    assertThat(KEY.open(token.substring(0, token.length() - 4), NOW)).isEmpty();
    assertThat(KEY.open(token + "AAAA", NOW)).isEmpty();
    assertThat(KEY.open(NOTICE.toString(), NOW)).isEmpty();
  }

  @Test
  @DisplayName("needs a key of 32 bytes or more")
  void shortKey() {
    assertThatIllegalArgumentException().isThrownBy(() -> key("too short"));
  }
}
