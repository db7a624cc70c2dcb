package org.tapeline.sizing.draft;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.sizing.advice.Adviser;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.advice.SizeAdvice;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.offset.OffsetPosterior;
import org.tapeline.sizing.units.Millimetres;

/**
 * What a fitter would act upon: which helmets of the model to bring, and how the head lies.
 *
 * @param size the one to try first
 * @param second the one to bring as well
 */
public record Advised(Optional<String> size, Optional<String> second, String outcome) {

  /** As the player would be advised by this chart. */
  public static Advised by(
      SizeChart chart,
      Map<String, OffsetPosterior> offsets,
      Millimetres head,
      Millimetres uncertainty,
      Hair hair) {
    SizeAdvice advice = Adviser.advise(List.of(chart), offsets, head, uncertainty, hair).getFirst();
    return new Advised(advice.size(), advice.second(), advice.outcome().code());
  }

  /** Such as {@code Youth medium, bring Youth large as well}. */
  public String said() {
    String first = size.map(SizeRange::said).orElse("No size (" + outcome.replace('-', ' ') + ")");
    return first + second.map(s -> ", bring " + SizeRange.said(s) + " as well").orElse("");
  }
}
