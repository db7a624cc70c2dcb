package org.tapeline.fitting.concussion;

/** What comes of a command. */
public sealed interface ConcussionDecision {

  /** It is recorded. */
  record Accepted(ConcussionEvent event) implements ConcussionDecision {}

  /**
   * It is not.
   *
   * @param field the entry that is wrong; empty for none
   * @param sentence what to do
   */
  record Refused(String code, String field, String sentence) implements ConcussionDecision {}
}
