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

  /**
   * The free slots at one field.
   *
   * @param folded whether it is folded away until somebody asks for it
   * @param days the first ones
   * @param more the rest, folded away
   */
  public record AtField(String heading, boolean folded, List<Day> days, List<Day> more) {}

  /**
   * Those of one day.
   *
   * @param later whether it is a longer wait than the present slot
   */
  public record Day(String date, boolean later, List<Time> times) {}

  /**
   * One of them.
   *
   * @param value names it in the form
   */
  public record Time(String value, String said) {}
}
