package org.tapeline.inventory.demand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What is bought when the money does not suffice for all: first what re-fit cases wait for, then
 * pack by pack what keeps most pieces from being short for its money. Each further pack of an item
 * does less than the one before it, so that taking the best next pack is the best of all choices,
 * but for what a last pack that is too dear leaves over.
 */
public final class Budget {
  private Budget() {}

  /**
   * What is wanted of an item at a place.
   *
   * @param quantity pieces, a multiple of the pack
   * @param waiting pieces of it that cases wait for
   * @param position pieces there and on their way, less those kept and waited for
   * @param packCost in hundredths of the currency, above 0
   */
  public record Want(
      int quantity, int pack, int waiting, int position, long packCost, DemandCount demand) {

    int packs() {
      return quantity / pack;
    }

    boolean forCases(int bought) {
      return bought * pack < waiting;
    }

    /** Pieces that the next pack keeps from being short. */
    double avoids(int bought) {
      int there = position + bought * pack;
      return demand.expectedShort(there) - demand.expectedShort(there + pack);
    }
  }

  /**
   * @param money in hundredths of the currency, 0 or more
   * @return pieces to buy, one number for each want, in their order
   */
  public static List<Integer> within(long money, List<Want> wants) {
    int[] bought = new int[wants.size()];
    long left = spend(money, wants, bought, true);
    spend(left, wants, bought, false);
    List<Integer> pieces = new ArrayList<>();
    for (int i = 0; i < bought.length; i++) {
      pieces.add(bought[i] * wants.get(i).pack());
    }
    return pieces;
  }

  private static long spend(long money, List<Want> wants, int[] bought, boolean cases) {
    long left = money;
    while (true) {
      int best = best(left, wants, bought, cases);
      if (best < 0) {
        return left;
      }
      bought[best]++;
      left -= wants.get(best).packCost();
    }
  }

  private static int best(long left, List<Want> wants, int[] bought, boolean cases) {
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < bought.length; i++) {
      Want want = wants.get(i);
      if (bought[i] < want.packs()
          && want.packCost() <= left
          && (!cases || want.forCases(bought[i]))) {
        open.add(i);
      }
    }
    ToDoubleFunction<Integer> worth = i -> wants.get(i).avoids(bought[i]) / wants.get(i).packCost();
    return open.stream().max(Comparator.comparingDouble(worth)).orElse(-1);
  }
}
