package org.tapeline.inventory.csv;

import java.util.List;
import org.tapeline.inventory.csv.ImportAnswer.RowError;

/** Nothing of a file was taken, since some of its rows are wrong. */
public final class ImportRefused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<RowError> errors;

  public ImportRefused(List<RowError> errors) {
    super("Nothing was imported: " + errors.size() + " values are wrong.");
    this.errors = List.copyOf(errors);
  }

  public List<RowError> errors() {
    return errors == null ? List.of() : errors;
  }
}
