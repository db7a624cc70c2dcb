package org.tapeline.inventory.demand;

/**
 * The lot that costs least a year in ordering and in keeping (Harris 1913).
 *
 * @param order cost of one order, 0 or more
 * @param yearly pieces a year, 0 or more
 * @param keeping cost of keeping one piece for a year, above 0
 */
public record EconomicLot(double order, double yearly, double keeping) {

  public double pieces() {
    return Math.sqrt(2 * order * yearly / keeping);
  }

  /** A year of such lots. */
  public double cost(double lot) {
    return order * yearly / lot + keeping * lot / 2;
  }

  /** In whole packs, one or more: of the two nearest numbers the cheaper. */
  public int packs(int pack) {
    int fewer = Math.max(1, (int) (pieces() / pack));
    boolean more = cost((double) (fewer + 1) * pack) < cost((double) fewer * pack);
    return (more ? fewer + 1 : fewer) * pack;
  }
}
