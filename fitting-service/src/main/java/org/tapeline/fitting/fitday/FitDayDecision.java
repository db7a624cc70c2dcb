package org.tapeline.fitting.fitday;

/** What comes of a command: an event, nothing, or a refusal with a sentence for the person. */
public sealed interface FitDayDecision {
  /** It happens. */
  record Accepted(FitDayEvent event) implements FitDayDecision {}

  /** It is so already. */
  record Unchanged() implements FitDayDecision {}

  /**
   * It does not.
   *
   * @param code stable, for programs
   * @param field the entry that is wrong; empty for none
   */
  record Refused(String code, String field, String sentence) implements FitDayDecision {}
}
