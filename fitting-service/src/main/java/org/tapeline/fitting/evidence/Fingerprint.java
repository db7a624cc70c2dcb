package org.tapeline.fitting.evidence;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * A short mark of the recorded facts, for paper: the first 12 bytes of a SHA-256 (FIPS 180-4), said
 * in 12 groups of two hexadecimal digits. Two sheets with one mark tell of the same facts.
 *
 * <p>What is marked is a text of one line a fact, each value preceded by its length so that no two
 * lists of facts look alike. No name stands in it: it stays the same when a player is erased. The
 * form of that text must not change; a new one needs a new format of {@link SheetKey}.
 */
public record Fingerprint(String said) {
  static final int BYTES = 12;

  public static Fingerprint of(Evidence e) {
    byte[] whole = sha256(facts(e));
    return new Fingerprint(HexFormat.ofDelimiter(" ").formatHex(Arrays.copyOf(whole, BYTES)));
  }

  static Fingerprint of(byte[] bytes) {
    return new Fingerprint(HexFormat.ofDelimiter(" ").formatHex(bytes));
  }

  byte[] bytes() {
    return HexFormat.ofDelimiter(" ").parseHex(said);
  }

  static String facts(Evidence e) {
    StringBuilder facts = new StringBuilder();
    line(facts, "session", e.session());
    line(facts, "player", e.player());
    line(facts, "team", e.team());
    line(facts, "field", e.field());
    line(facts, "helmet", e.tag(), e.model(), e.size());
    line(facts, "parts", e.parts().toArray());
    line(facts, "fitter", e.fitter());
    line(facts, "protocol", e.protocol(), e.protocolVersion());
    line(facts, "air", e.conditions().airCelsius());
    line(facts, "altitude", e.conditions().altitudeM());
    line(facts, "hair", e.conditions().hair());
    e.answers().forEach(a -> line(facts, "check", a.check(), a.result(), a.valueMm(), a.at()));
    e.steps().forEach(step -> line(facts, step));
    line(facts, "at", e.at());
    return facts.toString();
  }

  private static void line(StringBuilder facts, Evidence.Step step) {
    switch (step) {
      case Evidence.HelmetOn s -> line(facts, "tried", s.tag(), s.model(), s.size(), s.at());
      case Evidence.Failed s -> line(facts, "failed", s.check(), s.finding(), s.valueMm(), s.at());
      case Evidence.Remedied s -> line(facts, "remedied", s.check(), s.remedy(), s.item(), s.at());
      case Evidence.PassedOver s ->
          line(facts, "passed-over", s.check(), s.remedy(), s.item(), s.why(), s.at());
      case Evidence.TakenBack s ->
          line(facts, "taken-back", s.check(), s.remedy(), s.why(), s.at());
      case Evidence.Aside s -> line(facts, "aside", s.at());
      case Evidence.InHandsOf s -> line(facts, "in-hands-of", s.fitter(), s.at());
    }
  }

  private static void line(StringBuilder facts, String fact, Object... values) {
    facts.append(fact);
    for (Object value : values) {
      String text =
          value instanceof Optional<?> maybe
              ? maybe.map(Object::toString).orElse("")
              : String.valueOf(value);
      facts.append(' ').append(text.length()).append(':').append(text);
    }
    facts.append('\n');
  }

  private static byte[] sha256(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java runtime has SHA-256", e);
    }
  }
}
