package org.tapeline.fitting.fitday;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.journal.token.SignedTokens;

/**
 * Makes and reads the tokens of calendar links, which name the fields that a calendar shows. A
 * token has no end, since a calendar is subscribed to once; another key ends them all.
 */
final class FeedKey {
  private static final String ALL = "*";

  private final SignedTokens tokens;

  /**
   * @throws IllegalArgumentException when the key is shorter than {@link SignedTokens#LEAST_BYTES}
   */
  FeedKey(byte[] key) {
    this.tokens = new SignedTokens(key, "tapeline fit days");
  }

  /**
   * Which fields a calendar shows.
   *
   * @param all every field, also those that come later; then {@code fields} is empty
   */
  record Scope(boolean all, Set<String> fields) {
    static final Scope ALL_FIELDS = new Scope(true, Set.of());

    Scope {
      fields = Set.copyOf(fields);
    }

    boolean shows(String field) {
      return all || fields.contains(field);
    }
  }

  String token(Scope scope) {
    String said = scope.all() ? ALL : String.join(" ", new TreeSet<>(scope.fields()));
    return tokens.seal(said.getBytes(StandardCharsets.UTF_8));
  }

  /** What a token shows; empty for one that was not made with this key or was changed. */
  Optional<Scope> open(String token) {
    return tokens.open(token).map(content -> read(new String(content, StandardCharsets.UTF_8)));
  }

  private static Scope read(String said) {
    return said.equals(ALL) ? Scope.ALL_FIELDS : new Scope(false, Set.of(said.split(" ")));
  }
}
