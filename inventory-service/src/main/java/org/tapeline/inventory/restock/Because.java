package org.tapeline.inventory.restock;

import java.util.Locale;
import java.util.Optional;
import org.tapeline.inventory.demand.DemandCount;

/** A suggestion's numbers in plain sentences. */
final class Because {
  private Because() {}

  static String now(Plan plan, DemandCount need, Optional<String> from, int quantity) {
    return seen(plan)
        + String.format(
            Locale.ROOT,
            " About %s may be needed in the %s days that an order takes and the %s days between"
                + " orders (%d to %d in 9 of 10 cases).",
            pieces(need.mean()),
            days(plan.lead().medianDays()),
            days(plan.reviewDays()),
            need.quantile(0.05),
            need.quantile(0.95))
        + has(plan)
        + levels(plan)
        + request(plan, from, quantity);
  }

  private static String levels(Plan plan) {
    return plan.levels().reorderPoint() < 0
        ? ""
        : String.format(
            Locale.ROOT,
            " Request at %d or fewer, up to %d: then %d %% of what is asked for is on the shelf"
                + " (promised: %d %%).",
            plan.levels().reorderPoint(),
            plan.levels().upTo(),
            percent(plan.levels().fillRate()),
            percent(plan.promised()));
  }

  static String beforeSeason(Plan plan, int quantity) {
    DemandCount need = plan.season();
    return seen(plan)
        + String.format(
            Locale.ROOT,
            " About %s may be needed in a season of %d weeks (%d to %d in 9 of 10 cases); %d serve"
                + " %d %% of it.",
            pieces(need.mean()),
            plan.seasonWeeks(),
            need.quantile(0.05),
            need.quantile(0.95),
            plan.forSeason(),
            percent(plan.promised()))
        + has(plan)
        + request(plan, Optional.empty(), quantity);
  }

  private static String seen(Plan plan) {
    return counted(plan.demand().players(), "player")
        + ", "
        + plan.demand().used()
        + " used in "
        + counted(plan.demand().weeks(), "week")
        + " of play.";
  }

  private static String has(Plan plan) {
    Shelf s = plan.shelf();
    return String.format(
        Locale.ROOT,
        " There are %d, %d kept, %d on the way, %s: %d left.",
        s.onHand(),
        s.kept(),
        s.coming(),
        s.waiting() == 1 ? "1 case waits" : s.waiting() + " cases wait",
        s.position());
  }

  private static String request(Plan plan, Optional<String> from, int quantity) {
    if (quantity == 0) {
      return " Nothing to request.";
    }
    return from.map(place -> " " + place + " has " + quantity + " to spare.")
        .orElse(
            " Request "
                + quantity
                + (plan.item().pack() > 1 ? ", in packs of " + plan.item().pack() + "." : "."));
  }

  private static String counted(int n, String what) {
    return n + " " + what + (n == 1 ? "" : "s");
  }

  private static String pieces(double mean) {
    return String.format(Locale.ROOT, "%.1f", mean);
  }

  private static String days(double days) {
    return String.format(Locale.ROOT, "%.1f", days).replace(".0", "");
  }

  /** Rounded down: nothing is promised that is not kept. */
  private static int percent(double share) {
    return (int) Math.floor(share * 100 + 1e-9);
  }
}
