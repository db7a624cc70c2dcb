package org.tapeline.inventory.csv;

import java.util.ArrayList;
import java.util.List;
import org.tapeline.inventory.csv.ImportAnswer.RowError;

/** Counts how an import goes. */
public final class Tally {
  private int accepted;
  private int unchanged;
  private int rejected;
  private final List<RowError> errors = new ArrayList<>();

  public void taken(boolean changed) {
    if (changed) {
      accepted++;
    } else {
      unchanged++;
    }
  }

  public void rejected(Rows row) {
    rejected++;
    errors.addAll(row.errors());
  }

  public ImportAnswer answer() {
    return new ImportAnswer(accepted, unchanged, rejected, List.copyOf(errors));
  }
}
