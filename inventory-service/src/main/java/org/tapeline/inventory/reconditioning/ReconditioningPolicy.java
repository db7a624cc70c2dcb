package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;

/**
 * How this association has its helmets reconditioned: data in {@code policy/reconditioning.json}.
 *
 * @param version rises with each change
 * @param source where the figures come from
 * @param seasonFrom the season's first day as month-day, such as {@code 08-01}
 * @param seasonTo its last day, in the same calendar year
 * @param turnaroundWeeks from sending to being back on the shelf, 1 to 30
 * @param mostPerBatch helmets, 1 to 500
 * @param spareShare how much more than the need is kept usable, 0 to 1
 * @param lastAgeNearDays a helmet so near its last age is named on the list, 0 or more
 * @param currency ISO 4217 code of the association's currency
 * @param costCents what one helmet usually costs, in hundredths of the currency
 * @param reconditioners the association's own codes for them
 */
public record ReconditioningPolicy(
    int version,
    String source,
    String seasonFrom,
    String seasonTo,
    int turnaroundWeeks,
    int mostPerBatch,
    double spareShare,
    int lastAgeNearDays,
    String currency,
    long costCents,
    List<String> reconditioners) {

  /**
   * @throws IllegalArgumentException that names the figure which cannot be
   */
  public ReconditioningPolicy {
    check(version >= 1 && source != null && !source.isBlank(), "version and source are needed");
    Season.of(seasonFrom, seasonTo);
    check(turnaroundWeeks >= 1 && turnaroundWeeks <= 30, "turnaroundWeeks is from 1 to 30");
    check(mostPerBatch >= 1 && mostPerBatch <= 500, "mostPerBatch is from 1 to 500");
    check(spareShare >= 0 && spareShare <= 1, "spareShare is from 0 to 1");
    check(lastAgeNearDays >= 0, "lastAgeNearDays is 0 or more");
    check(Currency.getInstance(currency).getDefaultFractionDigits() == 2, "currency has cents");
    check(costCents >= 0, "costCents is 0 or more");
    check(
        !reconditioners.isEmpty()
            && reconditioners.stream().allMatch(r -> r.matches("[a-z0-9][a-z0-9-]{0,29}")),
        "reconditioners are codes such as recon-1");
    reconditioners = List.copyOf(reconditioners);
  }

  private static void check(boolean good, String otherwise) {
    if (!good) {
      throw new IllegalArgumentException("reconditioning.json: " + otherwise);
    }
  }

  public Season season() {
    return Season.of(seasonFrom, seasonTo);
  }

  /** The day on which what is sent that day is on the shelf again. */
  public LocalDate backOn(LocalDate sent) {
    return sent.plusWeeks(turnaroundWeeks);
  }
}
