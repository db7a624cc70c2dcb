package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The bodies of the commands to a session, from pages and programs alike. {@code enteredAt} is when
 * a phone without signal took it down; see {@link EnteredAt}.
 */
final class SessionBody {
  private SessionBody() {}

  /**
   * Open one; the field is the player's own where none is given.
   *
   * @param session the id that a phone gave it while it had no signal
   */
  record Open(String player, String field, Optional<UUID> session, Optional<Instant> enteredAt) {}

  /** Try a helmet, with the size that stands on its label. */
  record Helmet(String tag, String sizeLabel, Optional<Instant> enteredAt) {}

  /** Answer a check: {@code pass} or {@code fail}. */
  record Answered(
      String check,
      String result,
      Optional<String> axis,
      Optional<String> finding,
      Optional<Double> valueMm,
      Optional<Instant> enteredAt) {}

  /** Apply a remedy. */
  record Adjusted(
      String check, String remedy, Optional<String> item, Optional<Instant> enteredAt) {}

  /** A remedy is not possible here: {@code no-part} or {@code not-possible}. */
  record PassedOver(
      String check,
      String remedy,
      Optional<String> item,
      String why,
      Optional<Instant> enteredAt) {}

  /** Take an answer back, or with a remedy an adjustment. */
  record Corrected(
      String check, Optional<String> remedy, String why, Optional<Instant> enteredAt) {}

  /** Nothing but when: pause, resume. */
  record Now(Optional<Instant> enteredAt) {}

  /** Call it a fit; the parts are those in the helmet. */
  record Passed(
      Optional<Double> airCelsius,
      Optional<String> hair,
      List<String> parts,
      Optional<Instant> enteredAt) {}

  /** Call it no fit; without needs they follow from the checks that failed. */
  record Failed(List<Need> needs, Optional<Instant> enteredAt) {}

  /** End without a result, or take a pass back. */
  record Abandoned(String why, Optional<Instant> enteredAt) {}
}
