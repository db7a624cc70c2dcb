package org.tapeline.proof.fuzz.endpoint;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import org.tapeline.proof.fuzz.wire.Header;

/** What can be wrong in a signed link, and in the signature of a receipt. */
final class TokenTwists {
  private static final Predicate<Endpoint> LINK = e -> e.kind() == Endpoint.Kind.LINK;
  private static final Predicate<Endpoint> HOOK = e -> e.kind() == Endpoint.Kind.HOOK;
  private static final String ALPHABET =
      "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.~=";

  private static final List<String> RECEIPTS =
      List.of(
          "",
          "{",
          "[]",
          "null",
          "{\"id\":null,\"status\":null}",
          "{\"id\":[],\"status\":{}}",
          "{\"id\":\"a\\u0000b\",\"status\":\"delivered\"}",
          "{\"reference\":\"x\",\"status\":\"failed\"}",
          "{\"id\":\"" + "x".repeat(10_000) + "\",\"status\":\"delivered\"}",
          "id=%00&status=delivered",
          "id=%zz&status=delivered",
          "id=x&status=%FF",
          "&&==&",
          "x".repeat(20_000),
          "{\"id\":\"x\",\"status\":\"" + "y".repeat(9_000) + "\"}");

  private TokenTwists() {}

  static List<Twist> all() {
    return List.of(
        new Twist("a letter of the link changed", LINK, TokenTwists::changed),
        new Twist("a link cut short", LINK, TokenTwists::cut),
        new Twist("a link that goes on", LINK, (d, r) -> token(d, token(d) + letters(r, 5))),
        new Twist("a link made up", LINK, (d, r) -> token(d, letters(r, 80))),
        new Twist("a link of thousands of letters", LINK, (d, r) -> token(d, letters(r, 6_000))),
        new Twist("a forged receipt", HOOK, TokenTwists::forged),
        new Twist("a receipt that is odd", HOOK, TokenTwists::oddReceipt),
        new Twist("a receipt that is none", HOOK, TokenTwists::noReceipt),
        new Twist("a receipt that is none, again", HOOK, TokenTwists::noReceipt));
  }

  private static String token(Draft draft) {
    return draft.path.get("token");
  }

  private static void token(Draft draft, String token) {
    draft.path.put("token", token);
  }

  private static void changed(Draft draft, RandomGenerator random) {
    StringBuilder token = new StringBuilder(token(draft));
    if (!token.isEmpty()) {
      token.setCharAt(random.nextInt(token.length()), letters(random, 1).charAt(0));
    }
    token(draft, token.toString());
  }

  private static void cut(Draft draft, RandomGenerator random) {
    String token = token(draft);
    token(draft, token.substring(0, 1 + random.nextInt(Math.max(1, token.length() - 1))));
  }

  private static String letters(RandomGenerator random, int count) {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < count; i++) {
      letters.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    return letters.toString();
  }

  private static void forged(Draft draft, RandomGenerator random) {
    draft.headers.add(new Header("X-Timestamp", String.valueOf(System.currentTimeMillis() / 1000)));
    draft.headers.add(new Header("X-Signature", letters(random, 64)));
  }

  /** Signed as it should be. */
  private static void noReceipt(Draft draft, RandomGenerator random) {
    draft.bytes = Oddities.pick(RECEIPTS, random).getBytes(StandardCharsets.UTF_8);
  }

  private static void oddReceipt(Draft draft, RandomGenerator random) {
    draft.bytes = Encoded.utf8(Oddities.text(random));
  }
}
