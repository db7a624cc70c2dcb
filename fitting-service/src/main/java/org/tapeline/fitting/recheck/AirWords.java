package org.tapeline.fitting.recheck;

import java.util.Locale;
import java.util.Optional;

/** What the air does to the liner, in numbers that a fitter can follow. */
public final class AirWords {
  private static final double EXAMPLE_PSI = 2;

  private AirWords() {}

  /**
   * @param now conditions that still count; see {@link RecheckRules.Field#asOf}
   * @return such as {@code fitted at 21 °C and 240 m; now 4 °C at 240 m: the air takes 5.8 % less
   *     room}
   */
  public static String said(RecheckRules.Fit fit, RecheckRules.Field now) {
    if (fit.airCelsius().isEmpty()) {
      return "The temperature at the fit was not recorded: check in cold or hot weather.";
    }
    String fitted = "Fitted at " + celsius(fit.airCelsius().get()) + and(fit.altitudeM());
    if (now.airCelsius().isEmpty()) {
      return fitted + ". The temperature at the field is not known now.";
    }
    String today = "; now " + celsius(now.airCelsius().get()) + at(now.altitudeM());
    return outside(fit, now)
        .map(air -> fitted + today + ": the air takes " + room(air) + ".")
        .orElse(fitted + today + ". An altitude is not known: check in cold or hot weather.");
  }

  /** The bound for a liner that cannot give; empty where something is not known. */
  public static Optional<String> sealed(RecheckRules.Fit fit, RecheckRules.Field now) {
    return outside(fit, now)
        .map(
            air -> {
              double pascals =
                  Air.sealedGaugePascals(
                      EXAMPLE_PSI * Air.PASCALS_PER_PSI, air.atFit(), air.today());
              return String.format(
                  Locale.ROOT,
                  "A sealed liner that could not give, at %.1f psi then, would read %.1f psi (%.1f"
                      + " kPa) now. A real liner gives, so it changes less.",
                  EXAMPLE_PSI,
                  pascals / Air.PASCALS_PER_PSI,
                  pascals / 1000);
            });
  }

  private record Pair(Air.Outside atFit, Air.Outside today) {}

  private static Optional<Pair> outside(RecheckRules.Fit fit, RecheckRules.Field now) {
    boolean known =
        fit.airCelsius().isPresent()
            && fit.altitudeM().isPresent()
            && now.airCelsius().isPresent()
            && now.altitudeM().isPresent();
    return known
        ? Optional.of(
            new Pair(
                new Air.Outside(fit.airCelsius().get(), fit.altitudeM().get()),
                new Air.Outside(now.airCelsius().get(), now.altitudeM().get())))
        : Optional.empty();
  }

  private static String room(Pair air) {
    double percent = 100 * (Air.roomRatio(air.atFit(), air.today()) - 1);
    String size = String.format(Locale.ROOT, "%.1f", Math.abs(percent));
    return size.equals("0.0")
        ? "the same room"
        : size + " % " + (percent < 0 ? "less" : "more") + " room";
  }

  static String celsius(double degrees) {
    return number(degrees) + " °C";
  }

  private static String and(Optional<Double> altitude) {
    return altitude.map(m -> " and " + Math.round(m) + " m").orElse("");
  }

  private static String at(Optional<Double> altitude) {
    return altitude.map(m -> " at " + Math.round(m) + " m").orElse("");
  }

  /** One decimal, none where it is zero. */
  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.replaceFirst("\\.0$", "").replaceFirst("^-0$", "0");
  }
}
