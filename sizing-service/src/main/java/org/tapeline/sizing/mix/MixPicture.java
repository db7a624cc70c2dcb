package org.tapeline.sizing.mix;

import java.util.List;
import java.util.Locale;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeRange;

/** A forecast drawn: one line a size, with its band, its mean and what is there. */
public record MixPicture(Forecast f, List<Line> lines) {
  private static final int WIDTH = 300;

  /** A size; the numbers are places on the drawing, 0 to {@value #WIDTH}. */
  public record Line(Forecast.Size s, int low, int band, int mean, int usable) {
    public String said() {
      return SizeRange.said(s.size());
    }

    public String expected() {
      return String.format(Locale.ROOT, "%.1f", s.expected());
    }

    public long atRisk() {
      return Math.round(s.atRisk());
    }
  }

  static MixPicture of(Forecast f) {
    int most =
        Math.max(
            1, f.sizes().stream().mapToInt(s -> Math.max(s.high(), s.usable())).max().orElse(1));
    double scale = (double) WIDTH / most;
    return new MixPicture(
        f,
        f.sizes().stream()
            .map(
                s ->
                    new Line(
                        s,
                        (int) (s.low() * scale),
                        Math.max(2, (int) ((s.high() - s.low()) * scale)),
                        (int) (s.expected() * scale),
                        (int) (s.usable() * scale)))
            .toList());
  }

  public String modelSaid() {
    return ModelName.said(f.model());
  }

  public long atRisk() {
    return Math.round(f.atRisk());
  }
}
