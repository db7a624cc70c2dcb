package org.tapeline.sizing.advice;

import java.util.List;
import java.util.stream.Collectors;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Millimetres;

/** Advice for all models together: where one has no size, the others that have are named. */
public final class Adviser {
  private static final int MOST_OTHERS = 3;

  private Adviser() {}

  /**
   * @param uncertainty half the width of the 95 % interval around the head, without the hair
   */
  public static List<SizeAdvice> advise(
      List<SizeChart> charts, Millimetres head, Millimetres uncertainty, Hair hair) {
    Millimetres widened = hair.widen(uncertainty);
    List<SizeAdvice> looked =
        charts.stream().map(chart -> ChartLookup.look(chart, head, widened)).toList();
    return looked.stream()
        .map(advice -> advice.size().isPresent() ? advice : withOthers(advice, looked))
        .map(advice -> advice.saying(hair.caution()))
        .toList();
  }

  private static SizeAdvice withOthers(SizeAdvice advice, List<SizeAdvice> all) {
    String others =
        all.stream()
            .filter(other -> other.size().isPresent())
            .limit(MOST_OTHERS)
            .map(o -> ModelName.said(o.model()) + " (" + SizeRange.said(o.size().get()) + ")")
            .collect(Collectors.joining(", "));
    return advice.saying(
        others.isEmpty()
            ? " No model with a chart here has one: ask a helmet maker for a special order."
            : " Try " + others + ".");
  }
}
