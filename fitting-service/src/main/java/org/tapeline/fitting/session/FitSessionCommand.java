package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What a fitter wants of a session. Facts of others come with it: the decision looks nothing up.
 */
public sealed interface FitSessionCommand {
  Instant at();

  /** What is done with a session that is open and in hand. */
  sealed interface AtWork extends FitSessionCommand {}

  /** Begin with a player. */
  record Open(
      UUID session,
      UUID player,
      String field,
      String team,
      String fitter,
      List<FitSessionEvent.AdvisedSize> advised,
      Instant at)
      implements FitSessionCommand {}

  /**
   * Put a helmet on.
   *
   * @param helmet what is known of the helmet with that tag; empty when nothing is
   * @param sizeLabel the size that the fitter read on the label
   */
  record TryHelmet(String tag, Optional<KnownHelmet> helmet, String sizeLabel, Instant at)
      implements AtWork {}

  /**
   * A helmet as this service knows it.
   *
   * @param refusal why this player may not have it now; empty when nothing stands against it
   */
  record KnownHelmet(
      String tag, String model, String size, String place, Optional<String> refusal) {}

  /**
   * Answer a check.
   *
   * @param axis what the fitter says that the finding is about; empty for the check's own axis
   * @param valueMm what was measured, millimetres
   */
  record RecordCheck(
      String check,
      boolean passed,
      Optional<String> axis,
      Optional<String> finding,
      Optional<Double> valueMm,
      Instant at)
      implements AtWork {}

  /** Apply a remedy for a failed check. */
  record Adjust(String check, String remedy, Optional<String> item, Instant at) implements AtWork {}

  /**
   * Call it a fit.
   *
   * @param helmet what is known now of the helmet on the head: it may have been pulled meanwhile
   * @param parts the parts in the helmet, as the fitter lists them; those of the adjustments count
   *     in any case
   * @param endedElsewhere when another session of this player last ended, with a fit or without one
   */
  record Pass(
      Optional<KnownHelmet> helmet,
      List<String> parts,
      FitSessionEvent.Conditions conditions,
      Optional<Instant> endedElsewhere,
      Instant at)
      implements AtWork {}

  /**
   * Call it no fit.
   *
   * @param needs what the re-fit needs; empty to take it from the checks that failed
   * @param here what is at the field and advised now
   */
  record Fail(List<Need> needs, Here here, Instant at) implements AtWork {}

  /**
   * A remedy is not possible here.
   *
   * @param item the part that it would take; empty for the usual one
   * @param why {@code no-part} or {@code not-possible}
   */
  record PassOver(String check, String remedy, Optional<String> item, String why, Instant at)
      implements AtWork {}

  /**
   * Take back what was entered by mistake: the answer to a check or, where a remedy is named, the
   * last application of it.
   *
   * @param why code of the reason
   */
  record Correct(String check, Optional<String> remedy, String why, Instant at) implements AtWork {}

  /** Take back a pass that was recorded by mistake. */
  record TakeBackPass(String why, Instant at) implements FitSessionCommand {}

  /** Put the session aside for a while. */
  record Pause(Instant at) implements AtWork {}

  /**
   * Go on with it, or take it over.
   *
   * @param fitter who goes on
   */
  record Resume(String fitter, Instant at) implements FitSessionCommand {}

  /** End without a result. */
  record Abandon(String why, Instant at) implements FitSessionCommand {}
}
