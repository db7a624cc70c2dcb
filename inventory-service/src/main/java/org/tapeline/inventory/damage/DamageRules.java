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

  /** The kind that everybody may choose who does not know; never cosmetic, at no place. */
  public static final String UNSURE = "unsure";

  /** The place that is none of the others; nothing there is cosmetic. */
  public static final String ELSEWHERE = "other";

  /**
   * A code with the words for it.
   *
   * @param means what is meant, in a few words
   * @param at for a kind: the places at which it is offered; empty for all
   */
  public record Code(String code, String said, String means, List<String> at) {
    public Code {
      at = at == null ? List.of() : List.copyOf(at);
    }

    boolean offeredAt(String place) {
      return at.isEmpty() || place.equals(ELSEWHERE) || at.contains(place);
    }
  }

  /** A place on the helmet with a kind of damage. */
  public record Pair(String where, String what) {}

  /**
   * @throws IllegalArgumentException for rules that name what they do not list, leave nobody a way
   *     to say "not sure", call that cosmetic, or have no source
   */
  public DamageRules {
    Set<String> places = codes(where);
    Set<String> kinds = codes(what);
    if (!places.contains(ELSEWHERE) || !kinds.contains(UNSURE)) {
      throw new IllegalArgumentException("Damage rules need the codes other and unsure");
    }
    for (Code kind : what) {
      if (!places.containsAll(kind.at()) || kind.code().equals(UNSURE) && !kind.at().isEmpty()) {
        throw new IllegalArgumentException("Offered at a place that is none: " + kind.code());
      }
    }
    for (Pair pair : cosmetic) {
      if (!places.contains(pair.where()) || !kinds.contains(pair.what())) {
        throw new IllegalArgumentException("Not listed: " + pair);
      }
      if (pair.where().equals(ELSEWHERE) || pair.what().equals(UNSURE)) {
        throw new IllegalArgumentException("In doubt it is structural: " + pair);
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
      if (blank(code.said()) || blank(code.means())) {
        throw new IllegalArgumentException("A code without its words: " + code.code());
      }
    }
    return codes;
  }

  private static boolean blank(String text) {
    return text == null || text.isBlank();
  }

  public boolean knowsWhere(String code) {
    return where.stream().anyMatch(c -> c.code().equals(code));
  }

  public boolean knowsWhat(String code) {
    return what.stream().anyMatch(c -> c.code().equals(code));
  }

  /** The kinds that can be at that place, in the order in which they are offered. */
  public List<Code> whatAt(String place) {
    return what.stream().filter(c -> c.offeredAt(place)).toList();
  }

  /** The words for a place on the helmet; those of a code that is not listed are the code. */
  public String saidWhere(String code) {
    return said(where, code);
  }

  /** The words for a kind of damage. */
  public String saidWhat(String code) {
    return said(what, code);
  }

  private static String said(List<Code> list, String code) {
    return list.stream()
        .filter(c -> c.code().equals(code))
        .map(Code::said)
        .findFirst()
        .orElse(code);
  }

  public boolean structural(String where, String what) {
    return !cosmetic.contains(new Pair(where, what));
  }
}
