package org.tapeline.inventory.restock;

import java.util.List;
import java.util.OptionalLong;

/**
 * Suggestions as the page shows them.
 *
 * @param lines of which something is suggested, or all
 * @param cut of which less is requested than is suggested, for want of money
 * @param cost of what is requested
 * @param left of the money
 */
public record SuggestionsView(
    List<Suggestion> lines, List<Suggestion> cut, String cost, String left) {

  static SuggestionsView of(List<Suggestion> found, boolean all, OptionalLong money) {
    long cost = found.stream().mapToLong(Suggestion::grantedCost).sum();
    return new SuggestionsView(
        found.stream().filter(s -> all || s.quantity() > 0).toList(),
        found.stream().filter(s -> s.cut() > 0).toList(),
        Suggestion.money(cost),
        money.isPresent() ? Suggestion.money(money.getAsLong() - cost) : "");
  }

  /** Whether there is anything to request. */
  public boolean any() {
    return lines.stream().anyMatch(s -> s.granted() > 0);
  }
}
