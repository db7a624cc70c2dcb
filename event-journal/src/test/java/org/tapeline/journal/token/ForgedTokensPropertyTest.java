package org.tapeline.journal.token;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.tapeline.journal.token.SlotLinks.Slot;

@Label("A link's token")
class ForgedTokensPropertyTest {
  private static final byte[] KEY =
      "one key of at least thirty-two bytes".getBytes(StandardCharsets.UTF_8);
  private static final Instant NOW = Instant.parse("2025-09-12T17:00:00Z");
  private static final TimedTokens TOKENS = new TimedTokens(KEY, "one purpose");
  private static final SlotLinks SLOTS = new SlotLinks(KEY);

  private static String base64(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  @Property(tries = 300)
  @Label("gives back its content until its end, and nothing from then on")
  void ends(@ForAll byte[] content, @ForAll @IntRange(min = 1, max = 10_000_000) int seconds) {
    Instant until = NOW.plusSeconds(seconds);
    String token = TOKENS.seal(content, until);
    assertThat(TOKENS.open(token, NOW)).contains(content);
    assertThat(TOKENS.open(token, until.minusSeconds(1))).contains(content);
    assertThat(TOKENS.open(token, until)).isEmpty();
  }

  @Property(tries = 500)
  @Label("opens nothing with any bits changed")
  void changed(@ForAll byte[] content, @ForAll @IntRange(max = 999) int at, @ForAll byte other) {
    byte[] token = Base64.getUrlDecoder().decode(TOKENS.seal(content, NOW.plusSeconds(60)));
    int index = at % token.length;
    Assume.that(token[index] != other);
    token[index] = other;
    assertThat(TOKENS.open(base64(token), NOW)).isEmpty();
  }

  @Property(tries = 300)
  @Label("opens nothing when it is cut or lengthened")
  void cut(
      @ForAll byte[] content,
      @ForAll @IntRange(max = 999) int at,
      @ForAll @Size(min = 1) byte[] more) {
    String token = TOKENS.seal(content, NOW.plusSeconds(60));
    assertThat(TOKENS.open(token.substring(0, at % token.length()), NOW)).isEmpty();
    byte[] bytes = Base64.getUrlDecoder().decode(token);
    byte[] longer = Arrays.copyOf(bytes, bytes.length + more.length);
    System.arraycopy(more, 0, longer, bytes.length, more.length);
    assertThat(TOKENS.open(base64(longer), NOW)).isEmpty();
  }

  @Property(tries = 500)
  @Label("is not to be guessed, and made-up text opens nothing and breaks nothing")
  void guessed(@ForAll String text, @ForAll @Size(max = 120) byte[] bytes) {
    assertThat(TOKENS.open(text, NOW)).isEmpty();
    assertThat(TOKENS.open(base64(bytes), NOW)).isEmpty();
    assertThat(SLOTS.open(text, NOW)).isEmpty();
    assertThat(SLOTS.open(base64(bytes), NOW)).isEmpty();
  }

  @Property(tries = 300)
  @Label("has one spelling: padding, spare bits and percent signs are not taken")
  void spelling(@ForAll byte[] content, @ForAll @IntRange(max = 999) int at) {
    String token = TOKENS.seal(content, NOW.plusSeconds(60));
    int index = at % token.length();
    String encoded =
        token.substring(0, index)
            + "%"
            + Integer.toHexString(token.charAt(index))
            + token.substring(index + 1);
    assertThat(TOKENS.open(encoded, NOW)).isEmpty();
    assertThat(TOKENS.open(token + "=", NOW)).isEmpty();
    assertThat(TOKENS.open(token + "==", NOW)).isEmpty();
    String alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    for (char last : alphabet.toCharArray()) {
      String spelled = token.substring(0, token.length() - 1) + last;
      assertThat(TOKENS.open(spelled, NOW).isPresent()).isEqualTo(spelled.equals(token));
    }
  }

  @Property(tries = 300)
  @Label("opens nothing for any other purpose, with any other key, or a part of another token")
  void otherPurpose(
      @ForAll byte[] content,
      @ForAll @AlphaChars @StringLength(min = 1, max = 20) String purpose,
      @ForAll @Size(32) byte[] key) {
    String token = TOKENS.seal(content, NOW.plusSeconds(60));
    assertThat(new TimedTokens(KEY, purpose).open(token, NOW)).isEmpty();
    Assume.that(!Arrays.equals(key, KEY));
    assertThat(new TimedTokens(key, "one purpose").open(token, NOW)).isEmpty();
    String later = TOKENS.seal(content, NOW.plus(Duration.ofDays(9)));
    int signed = (content.length + 9) * 4 / 3 - 1;
    Assume.that(!later.substring(0, signed).equals(token.substring(0, signed)));
    assertThat(TOKENS.open(later.substring(0, signed) + token.substring(signed), NOW)).isEmpty();
  }

  @Property(tries = 200)
  @Label("of a slot says the case, the notice and the language, and no other link opens a slot")
  void slots(@ForAll long a, @ForAll long b, @ForAll @IntRange(min = 1, max = 9_999) int seconds) {
    Slot slot = new Slot(new UUID(a, b), new UUID(b, a), "es");
    Instant until = NOW.plusSeconds(seconds);
    String token = SLOTS.seal(slot, until);
    assertThat(SLOTS.open(token, NOW)).contains(slot);
    assertThat(SLOTS.open(token, until)).isEmpty();
    for (String other :
        new String[] {"tapeline notice page", "tapeline turn off news", "tapeline contact page"}) {
      assertThat(new TimedTokens(KEY, other).open(token, NOW)).isEmpty();
      byte[] content = new byte[34];
      assertThat(SLOTS.open(new TimedTokens(KEY, other).seal(content, until), NOW)).isEmpty();
    }
  }

  @Property(tries = 50)
  @Label("is the same however often it is made, so that it can be told from a changed one")
  void same(@ForAll byte[] content) {
    Optional<byte[]> first = TOKENS.open(TOKENS.seal(content, NOW.plusSeconds(5)), NOW);
    assertThat(TOKENS.seal(first.orElseThrow(), NOW.plusSeconds(5)))
        .isEqualTo(TOKENS.seal(content, NOW.plusSeconds(5)));
  }
}
