package org.tapeline.inventory.damage;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which damage takes a helmet out of use: data, validated when it is read. What is not listed as
 * cosmetic is structural: in doubt the helmet is not worn.
 *
 * @param version rises with each change
 * @param source where the rules come from
 */
public record DamageRules(
    int version, String source, List<Code> where, List<Code> what, List<Pair> cosmetic) {

  /** A code with the words for it. */
  public record Code(String code, String said) {}

  /** A place on the helmet with a kind of damage. */
  public record Pair(String where, String what) {}

  /**
   * @throws IllegalArgumentException for rules that name what they do not list, or have no source
   */
  public DamageRules {
    Set<String> places = codes(where);
    Set<String> kinds = codes(what);
    for (Pair pair : cosmetic) {
      if (!places.contains(pair.where()) || !kinds.contains(pair.what())) {
        throw new IllegalArgumentException("Not listed: " + pair);
      }
    }
    if (source == null || source.isBlank() || version < 1) {
      throw new IllegalArgumentException("Damage rules need a version and a source");
    }
  }

  private static Set<String> codes(List<Code> list) {
    Set<String> codes = new HashSet<>();
    for (Code code : list) {
      if (!code.code().matches("[a-z0-9-]{1,60}") || !codes.add(code.code())) {
        throw new IllegalArgumentException("A code that is wrong or listed twice: " + code.code());
      }
    }
    return codes;
  }

  public boolean knowsWhere(String code) {
    return where.stream().anyMatch(c -> c.code().equals(code));
  }

  public boolean knowsWhat(String code) {
    return what.stream().anyMatch(c -> c.code().equals(code));
  }

  public boolean structural(String where, String what) {
    return !cosmetic.contains(new Pair(where, what));
  }
}
