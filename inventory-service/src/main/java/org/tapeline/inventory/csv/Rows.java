package org.tapeline.inventory.csv;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.csv.CsvFile.Row;
import org.tapeline.inventory.csv.ImportAnswer.RowError;
import org.tapeline.journal.quarkus.http.MeantDay;

/** Reads the values of one row and gathers what is wrong with them. */
public final class Rows {
  private final Row row;
  private final List<RowError> errors = new ArrayList<>();

  public Rows(Row row) {
    this.row = row;
  }

  public List<RowError> errors() {
    return errors;
  }

  public boolean good() {
    return errors.isEmpty();
  }

  public String text(String column) {
    return row.get(column);
  }

  /** A value that must look so. */
  public String matching(String column, String pattern, String otherwise) {
    String value = row.get(column);
    if (!value.matches(pattern)) {
      wrong(column, otherwise);
    }
    return value;
  }

  public int whole(String column, int from, int to) {
    try {
      int value = Integer.parseInt(row.get(column));
      if (value >= from && value <= to) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Said below, as for a number out of range.
    }
    wrong(column, "Give a whole number from " + from + " to " + to + ".");
    return 0;
  }

  public Optional<LocalDate> date(String column) {
    String value = row.get(column);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(MeantDay.parse(value));
    } catch (DateTimeException e) {
      wrong(column, "Give the date as year-month-day, such as 2026-08-01.");
      return Optional.empty();
    }
  }

  public void wrong(String column, String message) {
    errors.add(row.error(column, message));
  }
}
