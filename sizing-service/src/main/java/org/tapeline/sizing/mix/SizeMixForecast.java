package org.tapeline.sizing.mix;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/**
 * How many of each size of a model the roster is expected to need.
 *
 * @param tooFew cost of each missing helmet with which the order was reckoned, above 0
 * @param tooMany cost of each helmet left over, above 0
 */
public record SizeMixForecast(
    String model,
    int chartVersion,
    LocalDate day,
    int known,
    int unknown,
    double tooFew,
    double tooMany,
    List<Size> sizes,
    Instant at) {

  /** A size: the expected count with its 5-95 % band, and what to order. */
  public record Size(String size, double expected, int low, int high, int usable, int order) {}

  static SizeMixForecast of(Forecast forecast, Newsvendor costs, Instant at) {
    return new SizeMixForecast(
        forecast.model(),
        forecast.chartVersion(),
        forecast.day(),
        forecast.known(),
        forecast.unknown(),
        costs.tooFew(),
        costs.tooMany(),
        forecast.sizes().stream()
            .map(
                s ->
                    new Size(
                        s.size(),
                        Math.round(s.expected() * 10) / 10.0,
                        s.low(),
                        s.high(),
                        s.usable(),
                        s.order()))
            .toList(),
        at);
  }
}
