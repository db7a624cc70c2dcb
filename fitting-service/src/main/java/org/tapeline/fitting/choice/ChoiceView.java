package org.tapeline.fitting.choice;

import java.util.List;
import java.util.Optional;

/**
 * The page on which a guardian chooses, in words.
 *
 * @param current the slot that the case has
 * @param had names it for {@link org.tapeline.fitting.fitday.SlotRef}; empty for none
 * @param notes what to know before choosing
 * @param none why there is nothing to choose; empty when there is
 */
public record ChoiceView(
    ChoiceWords words,
    String heading,
    Optional<String> current,
    String had,
    List<String> notes,
    Optional<String> none,
    List<AtField> fields) {

  /** The free slots at one field. */
  public record AtField(String heading, List<Day> days) {}

  /** Those of one day. */
  public record Day(String date, List<Time> times) {}

  /**
   * One of them.
   *
   * @param value names it in the form
   * @param later whether it is a longer wait than the present one
   */
  public record Time(String value, String said, boolean later) {}
}
