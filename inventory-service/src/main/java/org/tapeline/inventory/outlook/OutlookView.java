package org.tapeline.inventory.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tapeline.inventory.reconditioning.Money;

/** The outlook in words and numbers for its page. */
public record OutlookView(OutlookDesk.Picture picture) {

  /** Each season with all sizes together first, then size by size. */
  public List<Outlook.Year> rows() {
    List<Outlook.Year> rows = new ArrayList<>();
    for (Outlook.Year all : picture.answer().inAll()) {
      rows.add(all);
      picture.answer().bySize().stream().filter(y -> y.season() == all.season()).forEach(rows::add);
    }
    return List.copyOf(rows);
  }

  public boolean isKnown() {
    return !picture.answer().bySize().isEmpty();
  }

  long cents(int helmets) {
    return Math.multiplyExact(picture.policy().priceCents(), (long) helmets);
  }

  public String cost(int helmets) {
    return new Money(cents(helmets), picture.currency()).says();
  }

  /** {@code USD 1,000.00 to USD 2,000.00}. */
  public String costs(Band buy) {
    return buy.low() == buy.high() ? cost(buy.low()) : cost(buy.low()) + " to " + cost(buy.high());
  }

  public String price() {
    return cost(1);
  }

  public String meanShare() {
    return percent(picture.share().mean());
  }

  /** What the counts alone say of the share. */
  public String counted() {
    RejectionShare share = picture.share();
    return share.judged() == 0
        ? "none has come back yet"
        : share.rejected()
            + " of "
            + share.judged()
            + " so far, which allows "
            + percent(share.countedLow())
            + " to "
            + percent(share.countedHigh())
            + " (95 %)";
  }

  public String growth() {
    return percent(picture.policy().growthMean());
  }

  public String growthSd() {
    return percent(picture.policy().growthSd());
  }

  private static String percent(double share) {
    return String.format(Locale.US, "%.1f %%", 100 * share);
  }
}
