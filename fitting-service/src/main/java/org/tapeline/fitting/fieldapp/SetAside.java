package org.tapeline.fitting.fieldapp;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A session that a phone took down without signal and that the service could not record to its end:
 * what was entered, and why the rest was refused.
 *
 * @param refused the command that was refused; those after it were never asked for
 * @param code of the refusal
 * @param sentence of the refusal, as the fitter was told
 */
public record SetAside(
    UUID session,
    String player,
    String field,
    UUID refused,
    String code,
    String sentence,
    List<Entry> entries) {
  static final int MOST_ENTRIES = 300;
  private static final int LONGEST_SENTENCE = 1000;
  private static final String WORD = "-?[A-Za-z0-9][A-Za-z0-9:.,+-]{0,199}";

  /**
   * One thing that was entered.
   *
   * @param kind the end of the address that it was for, such as {@code checks}
   * @param said what was entered, codes and numbers by their name
   */
  public record Entry(UUID command, String kind, Instant enteredAt, Map<String, String> said) {
    boolean codesOnly() {
      return kind != null
          && kind.matches("[a-z]{1,20}")
          && command != null
          && enteredAt != null
          && said != null
          && said.entrySet().stream()
              .allMatch(e -> e.getKey().matches("[A-Za-z]{1,20}") && e.getValue().matches(WORD));
    }
  }

  /** What is wrong with it; empty when it can be kept. */
  String problem() {
    boolean all =
        session != null
            && refused != null
            && player != null
            && entries != null
            && field != null
            && code != null
            && sentence != null;
    if (!all) {
      return "Needed: session, player, field, refused, code, sentence and entries.";
    }
    if (!field.matches(WORD) || !code.matches("[a-z0-9-]{1,60}")) {
      return "The field and the code of the refusal are codes.";
    }
    if (sentence.length() > LONGEST_SENTENCE || entries.size() > MOST_ENTRIES) {
      return "Up to " + MOST_ENTRIES + " entries and a sentence of up to 1000 characters.";
    }
    return entries.stream().allMatch(Entry::codesOnly)
        ? ""
        : "Entries hold codes and numbers only: no names, no free text.";
  }
}
