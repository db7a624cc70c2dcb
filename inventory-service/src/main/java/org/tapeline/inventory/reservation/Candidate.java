package org.tapeline.inventory.reservation;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * A helmet of the right model and size that is free, and what speaks against it.
 *
 * @param here it is at the field already
 * @param minutes the way to the field, when somebody entered it
 * @param marks reports of marks on its surface
 */
public record Candidate(
    String tag,
    String place,
    boolean here,
    Optional<Integer> minutes,
    int marks,
    Optional<LocalDate> certifiedUntil) {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMM d, uuuu", Locale.US);

  /** Minutes against it, the way included; the fewest are the best. */
  public double score(SearchWeights weights, LocalDate today) {
    return way(weights) + marks(weights) + certification(weights, today);
  }

  private double way(SearchWeights weights) {
    return here
        ? 0
        : weights.elsewhere() + minutes.map(m -> (double) m).orElse(weights.wayUnknown());
  }

  private double marks(SearchWeights weights) {
    return Math.min(marks, weights.mostMarks()) * weights.perMark();
  }

  private double certification(SearchWeights weights, LocalDate today) {
    return certifiedUntil
        .map(until -> ChronoUnit.DAYS.between(today, until))
        .map(left -> Math.max(0, weights.daysEnough() - left) * weights.perDayMissing())
        .orElse(weights.certificationUnknown());
  }

  /** Why it was chosen, for the people who look at the case. */
  public String why(SearchWeights weights, LocalDate today) {
    return whence()
        + ", "
        + (marks == 0
            ? "no marks reported"
            : marks + (marks == 1 ? " mark" : " marks") + " reported")
        + ", "
        + certifiedUntil
            .map(until -> "certified until " + DAY.format(until))
            .orElse("not known until when it is certified")
        + ". It counts as "
        + Math.round(score(weights, today))
        + " minutes ("
        + Math.round(way(weights))
        + " for the way, "
        + Math.round(marks(weights))
        + " for marks, "
        + Math.round(certification(weights, today))
        + " for its certification), the fewest of all that were free.";
  }

  private String whence() {
    return here
        ? "At the field already"
        : "From "
            + place
            + minutes.map(m -> ", " + m + " minutes away").orElse(", the way not known");
  }
}
