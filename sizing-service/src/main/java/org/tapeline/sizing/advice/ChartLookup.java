package org.tapeline.sizing.advice;

import java.util.List;
import java.util.Optional;
import org.tapeline.sizing.advice.SizeAdvice.Outcome;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/**
 * Looks a head up in a size chart. Between two sizes the smaller one is tried first (common
 * practice, no published source).
 */
public final class ChartLookup {
  private ChartLookup() {}

  /**
   * @param uncertainty within which the true value may lie; an edge that is nearer than that brings
   *     the size beyond it as the second one
   */
  public static SizeAdvice look(SizeChart chart, Millimetres head, Millimetres uncertainty) {
    List<SizeRange> sizes = chart.sizes();
    String said = Inches.say(head) + " (" + Math.round(head.value()) + " mm)";
    if (head.compareTo(sizes.getFirst().from()) < 0) {
      return outside(
          chart,
          head,
          uncertainty,
          sizes.getFirst(),
          Outcome.TOO_SMALL,
          said + " is below the smallest size of this model.");
    }
    if (head.compareTo(sizes.getLast().to()) > 0) {
      return outside(
          chart,
          head,
          uncertainty,
          sizes.getLast(),
          Outcome.TOO_LARGE,
          said + " is above the largest size of this model.");
    }
    for (int i = 0; i < sizes.size(); i++) {
      if (sizes.get(i).holds(head)) {
        return inside(chart, i, head, uncertainty, said);
      }
      if (head.compareTo(sizes.get(i + 1).from()) < 0) {
        return between(chart, i, said, SizeChances.of(chart, head, uncertainty));
      }
    }
    throw new IllegalStateException("The chart of " + chart.model() + " has an end");
  }

  private static SizeAdvice inside(
      SizeChart chart, int i, Millimetres head, Millimetres uncertainty, String said) {
    SizeRange size = chart.sizes().get(i);
    Optional<SizeRange> second = beyondNearEdge(chart, i, head, uncertainty);
    String near =
        second
            .map(
                s ->
                    " The tape may be off by "
                        + plusMinus(uncertainty)
                        + ", so bring "
                        + s.said()
                        + " as well.")
            .orElse("");
    return new SizeAdvice(
        chart.model(),
        chart.version(),
        Optional.of(size.size()),
        second.map(SizeRange::size),
        Outcome.IN_SIZE,
        said + " lies in " + size.said() + "." + near,
        SizeChances.of(chart, head, uncertainty));
  }

  private static Optional<SizeRange> beyondNearEdge(
      SizeChart chart, int i, Millimetres head, Millimetres uncertainty) {
    SizeRange size = chart.sizes().get(i);
    boolean nearLower = head.value() - uncertainty.value() < size.from().value();
    boolean nearUpper = head.value() + uncertainty.value() > size.to().value();
    if (nearLower && i > 0) {
      return Optional.of(chart.sizes().get(i - 1));
    }
    return nearUpper && i + 1 < chart.sizes().size()
        ? Optional.of(chart.sizes().get(i + 1))
        : Optional.empty();
  }

  private static SizeAdvice between(SizeChart chart, int lower, String said, SizeChances chances) {
    SizeRange smaller = chart.sizes().get(lower);
    SizeRange larger = chart.sizes().get(lower + 1);
    return new SizeAdvice(
        chart.model(),
        chart.version(),
        Optional.of(smaller.size()),
        Optional.of(larger.size()),
        Outcome.BETWEEN_SIZES,
        said
            + " lies between "
            + smaller.said()
            + " and "
            + larger.said()
            + ". Between two sizes try the smaller one first; bring the larger as well.",
        chances);
  }

  private static SizeAdvice outside(
      SizeChart chart,
      Millimetres head,
      Millimetres uncertainty,
      SizeRange nearest,
      Outcome outcome,
      String reason) {
    boolean mayStillHold =
        head.apartFrom(outcome == Outcome.TOO_SMALL ? nearest.from() : nearest.to())
                .compareTo(uncertainty)
            <= 0;
    return new SizeAdvice(
        chart.model(),
        chart.version(),
        Optional.empty(),
        mayStillHold ? Optional.of(nearest.size()) : Optional.empty(),
        outcome,
        reason,
        SizeChances.of(chart, head, uncertainty));
  }

  private static String plusMinus(Millimetres uncertainty) {
    return "± " + Math.round(uncertainty.value()) + " mm";
  }
}
