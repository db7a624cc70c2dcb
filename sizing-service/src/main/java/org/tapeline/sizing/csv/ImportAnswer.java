package org.tapeline.sizing.csv;

import java.util.List;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * How an import went.
 *
 * @param accepted rows that changed something
 * @param unchanged rows that said what was known
 * @param rejected rows that were left out
 * @param notes what is worth knowing of rows that are good
 */
public record ImportAnswer(
    int accepted, int unchanged, int rejected, List<RowError> errors, List<RowError> notes) {

  public ImportAnswer {
    errors = List.copyOf(errors);
    // Answers that were kept before there were notes have none.
    notes = notes == null ? List.of() : List.copyOf(notes);
  }

  public ImportAnswer(int accepted, int unchanged, int rejected, List<RowError> errors) {
    this(accepted, unchanged, rejected, errors, List.of());
  }

  /** What is wrong with a row, and where. */
  public record RowError(long row, String column, String value, String message) {
    RowError withoutValue() {
      return new RowError(row, column, "", message);
    }
  }

  /** For keeping: what stood in a file of people must not outlive their erasure. */
  public ImportAnswer withoutValues() {
    return new ImportAnswer(
        accepted,
        unchanged,
        rejected,
        errors.stream().map(RowError::withoutValue).toList(),
        notes.stream().map(RowError::withoutValue).toList());
  }

  /** Whether good rows are kept when others are bad. */
  public enum Mode {
    ALL_OR_NONE,
    GOOD_ROWS;

    /** {@code all-or-none} (also when nothing is said) or {@code good-rows}. */
    public static Mode of(String text) {
      return switch (text == null ? "" : text) {
        case "", "all-or-none" -> ALL_OR_NONE;
        case "good-rows" -> GOOD_ROWS;
        default ->
            throw Problem.badRequest("mode", "The mode is all-or-none or good-rows, not " + text);
      };
    }
  }
}
