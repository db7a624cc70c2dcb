package org.tapeline.inventory.reconditioning;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * What was written when helmets came back, as it was written.
 *
 * @param outcome recertified, rejected, as-it-went or lost
 * @param certifiedUntil the day on the new labels, year-month-day
 * @param cost for each of them, such as {@code 45.00}; nothing is none
 * @param place where they are now; nothing is from where they went
 * @param tags which of them; nothing is all that are out
 */
public record Receipt(
    String outcome, String certifiedUntil, String cost, String place, List<String> tags) {
  private static final int MOST_YEARS = 10;

  public Receipt {
    outcome = text(outcome);
    certifiedUntil = text(certifiedUntil);
    cost = text(cost);
    place = text(place);
    tags =
        tags == null
            ? List.of()
            : List.copyOf(new LinkedHashSet<>(tags.stream().map(Receipt::text).toList()));
  }

  private static String text(String said) {
    return said == null ? "" : said.strip();
  }

  Outcome known() {
    return Outcome.of(outcome)
        .orElseThrow(() -> Drafts.wrong("outcome", "Choose how they came back."));
  }

  /** Needed for what is certified again, and only there. */
  Optional<LocalDate> until(LocalDate today) {
    if (known() != Outcome.RECERTIFIED) {
      return Optional.empty();
    }
    try {
      LocalDate day = LocalDate.parse(certifiedUntil);
      if (day.isAfter(today) && !day.isAfter(today.plusYears(MOST_YEARS))) {
        return Optional.of(day);
      }
    } catch (DateTimeParseException e) {
      // Said below, as for a day that cannot be.
    }
    throw Drafts.wrong(
        "certifiedUntil",
        "Read the new label: a day after today as year-month-day, such as "
            + today.plusYears(2)
            + ".");
  }

  long cents() {
    if (cost.isEmpty()) {
      return 0;
    }
    if (!cost.matches("[0-9]{1,5}([.][0-9]{1,2})?")) {
      throw Drafts.wrong("cost", "Write what one helmet cost, such as 45 or 45.50.");
    }
    return new BigDecimal(cost).movePointRight(2).longValueExact();
  }
}
