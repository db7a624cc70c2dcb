package org.tapeline.inventory.demand;

import java.util.List;
import java.util.function.DoubleFunction;

/**
 * What may be asked for until something that is not asked for today can be there.
 *
 * @param overLead while an order is on its way
 * @param overLeadAndReview until the order after it has come
 */
public record Horizon(DemandCount overLead, DemandCount overLeadAndReview) {
  private static final double WEEK = 7;

  /**
   * @param players 0 or more
   * @param reviewDays how often the warehouse sees to the requests, above 0
   */
  public static Horizon of(DemandRate rate, int players, LeadTime lead, double reviewDays) {
    List<Double> days = lead.days();
    return new Horizon(
        over(days, d -> rate.demand(players, d / WEEK)),
        over(days, d -> rate.demand(players, (d + reviewDays) / WEEK)));
  }

  private static DemandCount over(List<Double> days, DoubleFunction<DemandCount> demand) {
    return DemandCount.mixed(days.stream().map(demand::apply).toList());
  }

  /** What is expected to be asked for from one review to the next. */
  public double betweenReviews() {
    return overLeadAndReview.mean() - overLead.mean();
  }

  /** Of that, the share which must wait when so many pieces are there or on their way. */
  double shareShort(int position) {
    double waiting = overLeadAndReview.expectedShort(position) - overLead.expectedShort(position);
    return betweenReviews() > 0 ? waiting / betweenReviews() : 0;
  }
}
