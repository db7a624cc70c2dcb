package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;

/** The bodies of the commands to a session, from pages and programs alike. */
final class SessionBody {
  private SessionBody() {}

  /** Open one; the field is the player's own where none is given. */
  record Open(String player, String field) {}

  /** Try a helmet, with the size that stands on its label. */
  record Helmet(String tag, String sizeLabel) {}

  /** Answer a check: {@code pass} or {@code fail}. */
  record Answered(
      String check,
      String result,
      Optional<String> axis,
      Optional<String> finding,
      Optional<Double> valueMm) {}

  /** Apply a remedy. */
  record Adjusted(String check, String remedy, Optional<String> item) {}

  /** Call it a fit; the parts are those in the helmet. */
  record Passed(Optional<Double> airCelsius, Optional<String> hair, List<String> parts) {}

  /** Call it no fit; without needs they follow from the checks that failed. */
  record Failed(List<Need> needs) {}

  /** End without a result. */
  record Abandoned(String why) {}
}
