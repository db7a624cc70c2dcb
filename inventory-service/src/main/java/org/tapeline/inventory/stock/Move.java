package org.tapeline.inventory.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Parts that go from one account to another: what one gives the other gets, so that the sum over
 * all accounts is always zero.
 *
 * @param model the helmet model that the part is for; empty for any
 * @param quantity pieces, not 0; less than 0 goes the other way
 */
public record Move(String from, String to, String item, String model, int quantity) {
  private static final String PLACE = "place:";
  private static final String OUTSIDE = "outside:";

  public Move {
    if (quantity == 0 || from.equals(to)) {
      throw new IllegalArgumentException("A move takes something from one account to another");
    }
  }

  /** One side of a move. */
  public record Entry(String account, String item, String model, int amount) {}

  public List<Entry> entries() {
    List<Entry> both = new ArrayList<>();
    both.add(new Entry(from, item, model, -quantity));
    both.add(new Entry(to, item, model, quantity));
    return both;
  }

  public static String place(String code) {
    return PLACE + code;
  }

  public static String outside(String what) {
    return OUTSIDE + what;
  }

  /** The place of an account; empty for one outside. */
  public static Optional<String> placeOf(String account) {
    return account.startsWith(PLACE)
        ? Optional.of(account.substring(PLACE.length()))
        : Optional.empty();
  }

  /** How an account is said to people: a place by its code, one outside by its word. */
  public static String said(String account) {
    return placeOf(account).orElseGet(() -> account.substring(OUTSIDE.length()).replace('-', ' '));
  }
}
