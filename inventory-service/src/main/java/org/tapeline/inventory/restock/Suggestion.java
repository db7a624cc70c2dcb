package org.tapeline.inventory.restock;

import java.util.Locale;
import java.util.Optional;
import org.tapeline.inventory.demand.Budget.Want;
import org.tapeline.inventory.demand.DemandCount;

/**
 * What to request for a shelf, and why.
 *
 * @param mode {@code in-season}: until the next order but one can be there; {@code pre-season}: for
 *     the whole season
 * @param expected pieces over the horizon, and {@code low} to {@code high} in 9 of 10 cases
 * @param reorderPoint at this position or below it a request is raised
 * @param upTo the position up to which is requested
 * @param fillRate the share of demand that is then served from the shelf, 0 to 1
 * @param quantity pieces to request, 0 or more
 * @param cost of these in hundredths of the currency; 0 when one of our places has them
 * @param from one of our places; empty for outside
 * @param granted pieces for which the money suffices
 * @param because the numbers in a sentence
 */
public record Suggestion(
    String mode,
    String place,
    String item,
    Shelf shelf,
    int players,
    double expected,
    int low,
    int high,
    int reorderPoint,
    int upTo,
    int pack,
    double fillRate,
    double promised,
    int quantity,
    long cost,
    Optional<String> from,
    int granted,
    String because) {

  static Suggestion now(Plan plan, Optional<String> from, int quantity) {
    DemandCount need = plan.horizon().overLeadAndReview();
    return of(
        plan,
        "in-season",
        need,
        plan.levels().reorderPoint(),
        plan.levels().upTo(),
        plan.levels().fillRate(),
        quantity,
        from,
        Because.now(plan, need, from, quantity));
  }

  static Suggestion beforeSeason(Plan plan, double fillRate, int quantity) {
    int level = plan.forSeason();
    return of(
        plan,
        "pre-season",
        plan.season(),
        level - 1,
        level,
        fillRate,
        quantity,
        Optional.empty(),
        Because.beforeSeason(plan, quantity));
  }

  private static Suggestion of(
      Plan plan,
      String mode,
      DemandCount need,
      int reorderPoint,
      int upTo,
      double fillRate,
      int quantity,
      Optional<String> from,
      String because) {
    return new Suggestion(
        mode,
        plan.place().code(),
        plan.shelf().item(),
        plan.shelf(),
        plan.demand().players(),
        need.mean(),
        need.quantile(0.05),
        need.quantile(0.95),
        reorderPoint,
        upTo,
        plan.item().pack(),
        fillRate,
        plan.promised(),
        quantity,
        from.isPresent() ? 0 : quantity * plan.item().cost(),
        from,
        quantity,
        because);
  }

  Suggestion granting(int pieces) {
    return new Suggestion(
        mode,
        place,
        item,
        shelf,
        players,
        expected,
        low,
        high,
        reorderPoint,
        upTo,
        pack,
        fillRate,
        promised,
        quantity,
        cost,
        from,
        pieces,
        because);
  }

  /** For the budget; cases for which one is on its way need no more. */
  Want want(Plan plan) {
    DemandCount need =
        mode.equals("in-season") ? plan.horizon().overLeadAndReview() : plan.season();
    return new Want(
        quantity,
        pack,
        Math.max(0, shelf.waiting() - shelf.coming()),
        shelf.position(),
        pack * plan.item().cost(),
        need);
  }

  /** Pieces for which the money does not suffice. */
  public int cut() {
    return quantity - granted;
  }

  public long grantedCost() {
    return quantity == 0 ? 0 : cost / quantity * granted;
  }

  public String money() {
    return money(grantedCost());
  }

  /** As a form sends it. */
  public String row() {
    return place + " " + item + " " + granted;
  }

  public int percent() {
    return (int) Math.floor(fillRate * 100 + 1e-9);
  }

  /** Hundredths as a number with two places. */
  static String money(long hundredths) {
    return String.format(Locale.ROOT, "%,d.%02d", hundredths / 100, hundredths % 100);
  }

  public String need() {
    return String.format(Locale.ROOT, "%.1f (%d to %d)", expected, low, high);
  }
}
