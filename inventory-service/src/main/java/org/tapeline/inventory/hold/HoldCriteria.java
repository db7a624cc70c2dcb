package org.tapeline.inventory.hold;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * Which helmets a hold concerns: those that meet all the conditions that are given, and those on
 * the tag list besides. What is not known of a helmet (its lot, when it was made) counts as
 * matching: not known is not free.
 *
 * @param lots any of these, as printed on the label; empty for all lots
 * @param madeFrom the first day of manufacture, included
 * @param madeTo the last day of manufacture, included
 * @param tags helmets that are concerned whatever they are
 */
public record HoldCriteria(
    Optional<String> model,
    Set<String> lots,
    Optional<LocalDate> madeFrom,
    Optional<LocalDate> madeTo,
    Set<String> tags) {
  /** The lot of a helmet on which nobody could read it. */
  static final String NOT_STATED = "not-stated";

  public HoldCriteria {
    lots = Set.copyOf(lots);
    tags = Set.copyOf(tags);
  }

  /** A helmet as far as a hold asks; no day of manufacture when it is not known. */
  public record Described(String tag, String model, String lot, Optional<LocalDate> madeOn) {}

  /** It says nothing, and would concern every helmet there is. */
  public boolean saysNothing() {
    return !conditions() && tags.isEmpty();
  }

  private boolean conditions() {
    return model.isPresent() || !lots.isEmpty() || madeFrom.isPresent() || madeTo.isPresent();
  }

  /** Whether it concerns the helmet. */
  public boolean covers(Described helmet) {
    return tags.contains(helmet.tag()) || conditions() && meets(helmet);
  }

  private boolean meets(Described helmet) {
    boolean lot = lots.isEmpty() || lots.contains(helmet.lot()) || helmet.lot().equals(NOT_STATED);
    boolean tooEarly =
        madeFrom.flatMap(from -> helmet.madeOn().filter(day -> day.isBefore(from))).isPresent();
    boolean tooLate =
        madeTo.flatMap(to -> helmet.madeOn().filter(day -> day.isAfter(to))).isPresent();
    return lot && !tooEarly && !tooLate && model.filter(m -> !m.equals(helmet.model())).isEmpty();
  }
}
