package org.tapeline.inventory.stock;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts that go from one account to another: what one gives the other gets, so that the sum over
 * all accounts is always zero.
 *
 * @param model the helmet model that the part is for; empty for any
 * @param quantity pieces, not 0; less than 0 goes the other way
 */
public record Move(String from, String to, String item, String model, int quantity) {

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
    return "place:" + code;
  }

  public static String outside(String what) {
    return "outside:" + what;
  }
}
