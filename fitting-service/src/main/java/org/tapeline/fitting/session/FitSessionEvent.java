package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** What happens in a fit session. */
public sealed interface FitSessionEvent {
  UUID session();

  /** When it happened. */
  Instant at();

  /** The size that was advised for a model. */
  record AdvisedSize(String model, String size) {}

  /** A fitter began with a player. */
  record SessionOpened(
      UUID session,
      UUID player,
      String field,
      String team,
      String protocol,
      int protocolVersion,
      String fitter,
      List<AdvisedSize> advised,
      Instant at)
      implements FitSessionEvent {}

  /** A helmet was put on; its size label agrees with its record. */
  record HelmetTried(UUID session, UUID player, String tag, String model, String size, Instant at)
      implements FitSessionEvent {}

  /**
   * A check was answered.
   *
   * @param result {@code pass} or {@code fail}
   * @param valueMm a measured value, millimetres
   */
  record CheckRecorded(
      UUID session,
      UUID player,
      String check,
      String result,
      Optional<String> axis,
      Optional<String> finding,
      Optional<Double> valueMm,
      Instant at)
      implements FitSessionEvent {}

  /**
   * A remedy was applied.
   *
   * @param item the part that it took from stock
   * @param voids checks that no longer count
   */
  record AdjustmentMade(
      UUID session,
      UUID player,
      String check,
      String remedy,
      Optional<String> item,
      List<String> voids,
      Instant at)
      implements FitSessionEvent {}

  /**
   * A remedy is not possible here.
   *
   * @param item the part that it would have taken
   * @param why {@code no-part} or {@code not-possible}
   */
  record RemedyPassedOver(
      UUID session,
      UUID player,
      String check,
      String remedy,
      Optional<String> item,
      String why,
      Instant at)
      implements FitSessionEvent {}

  /**
   * An entry was a mistake: it no longer counts, and what it had voided stays void.
   *
   * @param remedy the remedy that was not applied after all; empty for the check's answer
   */
  record EntryCorrected(
      UUID session, UUID player, String check, Optional<String> remedy, String why, Instant at)
      implements FitSessionEvent {}

  /** The fitter put the session aside. */
  record SessionPaused(UUID session, UUID player, Instant at) implements FitSessionEvent {}

  /** A fitter, the same or another, went on with it. */
  record SessionResumed(UUID session, UUID player, String fitter, Instant at)
      implements FitSessionEvent {}

  /** A pass was a mistake and is taken back. */
  record PassTakenBack(UUID session, UUID player, String tag, String why, Instant at)
      implements FitSessionEvent {}

  /**
   * Conditions at the fit.
   *
   * @param airCelsius air temperature, degrees Celsius
   * @param altitudeM altitude of the field, metres
   * @param hair usual, short, long or braids
   */
  record Conditions(
      Optional<Double> airCelsius, Optional<Double> altitudeM, Optional<String> hair) {}

  /** A check with the answer that counts. */
  record CheckPassed(String check, String result, Instant at) {}

  /** Every required check passed after the last change. */
  record FitPassed(
      UUID session,
      UUID player,
      String field,
      String team,
      String tag,
      String model,
      String size,
      String fitter,
      String protocol,
      int protocolVersion,
      List<String> parts,
      Conditions conditions,
      List<CheckPassed> checks,
      Instant at)
      implements FitSessionEvent {}

  /** The helmet could not be made to fit. */
  record FitFailed(
      UUID session,
      UUID player,
      String field,
      String team,
      Optional<String> tag,
      Optional<String> model,
      Optional<String> size,
      String fitter,
      List<String> failedChecks,
      List<Need> needs,
      Instant at)
      implements FitSessionEvent {}

  /** The session ended without a result. */
  record SessionAbandoned(UUID session, UUID player, String why, Instant at)
      implements FitSessionEvent {}
}
