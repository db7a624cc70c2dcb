package org.tapeline.sizing.roster;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.sizing.advice.SizeAdvice;
import org.tapeline.sizing.reading.Measurement;

/** What happens to a player, without anything that says who the player is. */
public sealed interface PlayerEvent {
  UUID player();

  /** On the roster for the first time, or again after leaving. */
  record PlayerEnrolled(UUID player, String number, String team, String field)
      implements PlayerEvent {}

  /** To another team or field. */
  record PlayerMoved(UUID player, String team, String field) implements PlayerEvent {}

  /** Off the roster. */
  record PlayerLeft(UUID player) implements PlayerEvent {}

  /**
   * A head circumference.
   *
   * @param hair usual, short, long or braids; empty for a head recorded before that was asked
   * @param confirmed somebody stood by a value that is unusual for the age or smaller than before
   * @param by staff id of the measurer
   * @param confirmedBy staff id of who stood by it; empty when nothing had to be confirmed
   */
  record HeadMeasured(
      UUID player,
      List<ReadingTaken> readings,
      double valueMm,
      double uncertaintyMm,
      String method,
      Optional<String> hair,
      boolean confirmed,
      String by,
      Optional<String> confirmedBy,
      Instant at)
      implements PlayerEvent {}

  /**
   * A recorded head was not right. Without readings when it was withdrawn.
   *
   * @param corrects version of the event by which the head was recorded
   * @param withdrawn it was another player's: it does not count any more
   * @param confirmed somebody stood by a value that is unusual for the age or smaller than before
   * @param why misread, wrong-player, wrong-unit or other
   * @param by staff id of who corrected
   */
  record HeadCorrected(
      UUID player,
      long corrects,
      boolean withdrawn,
      Optional<List<ReadingTaken>> readings,
      Optional<Double> valueMm,
      Optional<Double> uncertaintyMm,
      Optional<String> method,
      Optional<String> hair,
      boolean confirmed,
      String why,
      String by,
      Instant at)
      implements PlayerEvent {

    static HeadCorrected withdrawn(UUID player, long corrects, String by, Instant at) {
      return new HeadCorrected(
          player,
          corrects,
          true,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          false,
          CorrectionReason.WRONG_PLAYER.code(),
          by,
          at);
    }
  }

  /** One reading, as it was understood and in millimetres. */
  record ReadingTaken(String entered, double mm) {
    static List<ReadingTaken> of(Measurement measurement) {
      return measurement.readings().stream()
          .map(r -> new ReadingTaken(r.entered(), r.length().value()))
          .toList();
    }
  }

  /**
   * Which sizes to try.
   *
   * @param valueMm the head that it rests on; without advice the one that was withdrawn
   * @param advice one entry a model; none when the last head was withdrawn
   */
  record SizeAdvised(UUID player, double valueMm, List<ModelAdvice> advice)
      implements PlayerEvent {}

  /**
   * The advice for one model.
   *
   * @param chances the sizes that are likely enough to be named, rounded to hundredths
   */
  record ModelAdvice(
      String model,
      int chartVersion,
      Optional<String> size,
      Optional<String> second,
      String outcome,
      String reason,
      List<SizeChance> chances) {

    /** Advice that was given before chances were told has none. */
    public ModelAdvice {
      chances = chances == null ? List.of() : List.copyOf(chances);
    }

    /** The same for the player, by whichever version of the chart. */
    boolean saysSameAs(ModelAdvice other) {
      return equals(
          new ModelAdvice(
              other.model,
              chartVersion,
              other.size,
              other.second,
              other.outcome,
              other.reason,
              other.chances));
    }

    static ModelAdvice of(SizeAdvice advice) {
      return new ModelAdvice(
          advice.model(),
          advice.chartVersion(),
          advice.size(),
          advice.second(),
          advice.outcome().code(),
          advice.reason(),
          advice.chances().sizes().stream()
              .map(c -> new SizeChance(c.size(), Math.round(c.chance() * 100) / 100.0))
              .filter(c -> c.chance() > 0)
              .toList());
    }
  }

  /** A size with its chance, 0 to 1. */
  record SizeChance(String size, double chance) {}
}
