package org.tapeline.inventory.demand;

/**
 * When and how much to request.
 *
 * @param reorderPoint at this position or below it a request is raised; -1 when nothing is kept
 * @param lot what is requested is a multiple of it, 1 or more
 * @param fillRate the share of demand that is served from the shelf with these levels
 */
public record StockLevels(int reorderPoint, int lot, double fillRate) {

  public static final StockLevels NONE = new StockLevels(-1, 1, 1);

  /**
   * The lowest levels that keep the promise.
   *
   * @param promised the share of demand to be served from the shelf, from 0 to below 1
   * @param lot pieces, 1 or more
   */
  public static StockLevels keeping(double promised, Horizon horizon, int lot) {
    if (promised < 0 || promised >= 1 || lot < 1) {
      throw new IllegalArgumentException("A promise is from 0 to below 1, a lot 1 or more");
    }
    if (horizon.betweenReviews() <= 0) {
      return NONE;
    }
    int point = -1;
    while (fillRate(horizon, point, lot) < promised) {
      point++;
    }
    return new StockLevels(point, lot, fillRate(horizon, point, lot));
  }

  /**
   * The share of demand that is served from the shelf. After each review the position is any of
   * {@code reorderPoint + 1} to {@code reorderPoint + lot} with the same chance, as it is for
   * pieces asked for one by one (Hadley and Whitin 1963, from memory); what is short in a review
   * period is what is owed at its end less what was owed at its start.
   */
  public static double fillRate(Horizon horizon, int reorderPoint, int lot) {
    double waits = 0;
    for (int position = reorderPoint + 1; position <= reorderPoint + lot; position++) {
      waits += horizon.shareShort(position) / lot;
    }
    return Math.min(1, Math.max(0, 1 - waits));
  }

  /** The position up to which is requested. */
  public int upTo() {
    return reorderPoint + lot;
  }

  /** How many to request at this position: whole lots, none above the reorder point. */
  public int order(int position) {
    int needed = reorderPoint + 1 - position;
    return needed <= 0 ? 0 : Math.ceilDiv(needed, lot) * lot;
  }
}
