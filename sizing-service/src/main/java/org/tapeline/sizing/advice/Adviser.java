package org.tapeline.sizing.advice;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.offset.OffsetPosterior;
import org.tapeline.sizing.units.Millimetres;

/** Advice for all models together: where one has no size, the others that have are named. */
public final class Adviser {
  private static final int MOST_OTHERS = 3;

  private Adviser() {}

  /**
   * @param offsets how the charts of some models have to be read, as fits have shown
   * @param uncertainty half the width of the 95 % interval around the head, without the hair
   */
  public static List<SizeAdvice> advise(
      List<SizeChart> charts,
      Map<String, OffsetPosterior> offsets,
      Millimetres head,
      Millimetres uncertainty,
      Hair hair) {
    Millimetres widened = hair.widen(uncertainty);
    List<SizeAdvice> looked =
        charts.stream()
            .map(chart -> look(chart, offsets.get(chart.model()), head, widened))
            .toList();
    return looked.stream()
        .map(advice -> advice.size().isPresent() ? advice : withOthers(advice, looked))
        .map(advice -> advice.saying(hair.caution()))
        .toList();
  }

  private static SizeAdvice look(
      SizeChart chart, OffsetPosterior offset, Millimetres head, Millimetres uncertainty) {
    int mm = offset == null ? 0 : offset.appliedMm();
    if (mm == 0) {
      return ChartLookup.look(chart, head, uncertainty);
    }
    Millimetres counted = new Millimetres(head.value() + mm);
    String why =
        String.format(
            Locale.ROOT,
            " Counted %d mm %s: so %d passed fits in this model have shown (95 %%: %+.0f to %+.0f"
                + " mm).",
            Math.abs(mm),
            mm > 0 ? "larger" : "smaller",
            offset.fits(),
            offset.lowMm(),
            offset.highMm());
    return ChartLookup.look(chart, counted, uncertainty).saying(why);
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
