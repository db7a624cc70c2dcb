package org.tapeline.fitting.session;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What comes of a command: events, or a refusal with a sentence for the fitter. */
public sealed interface Decision {
  /** It happens. */
  record Accepted(List<FitSessionEvent> events) implements Decision {}

  /**
   * It does not.
   *
   * @param code stable, for programs
   * @param field the entry that is wrong; empty for none
   */
  record Refused(String code, String field, String sentence) implements Decision {}

  static Decision accepted(FitSessionEvent event) {
    return new Accepted(List.of(event));
  }

  static Decision refused(String code, String sentence) {
    return new Refused(code, "", sentence);
  }

  static Decision refused(String code, String field, String sentence) {
    return new Refused(code, field, sentence);
  }

  /** A sentence for an entry that is none of the words allowed. */
  static String oneOf(Set<String> words) {
    return "Give one of: " + String.join(", ", new TreeSet<>(words)) + ".";
  }
}
