package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;

/** What is to be done next in a fit session. */
public sealed interface Proposal {

  /** The session is over, or not begun: nothing. */
  record Nothing() implements Proposal {}

  /** It was put aside: resume it first. */
  record Resume() implements Proposal {}

  /**
   * Put a helmet on.
   *
   * @param tags those of this kind that are free at the field, the best first; never empty
   */
  record PutOn(String model, String size, List<String> tags) implements Proposal {}

  /** Look at a check and answer it. */
  record Look(String check) implements Proposal {}

  /**
   * Try a remedy for a check that failed.
   *
   * @param item the part that it takes; empty for none
   * @param onRecord the part is here by the records; where it is not, somebody has to look
   */
  record Try(String check, String remedy, Optional<String> item, boolean onRecord)
      implements Proposal {}

  /**
   * Measure the head again: what is needed is not what the measured size says, or it was never
   * measured.
   *
   * @param otherwise what a fail now would name
   */
  record MeasureAgain(List<Need> otherwise) implements Proposal {}

  /**
   * No fit can be reached here: end with what the re-fit needs.
   *
   * @param needs never empty
   */
  record EndWithoutFit(List<Need> needs) implements Proposal {}

  /** Every check has passed since the last change. */
  record SignOff() implements Proposal {}
}
