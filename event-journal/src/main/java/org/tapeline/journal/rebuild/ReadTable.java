package org.tapeline.journal.rebuild;

import java.util.List;

/**
 * A table of a read model.
 *
 * @param kept columns that do not follow from events alone: a rebuild leaves them as they are;
 *     where the row was missing, they get what the events say of them
 * @param whenSet columns of which only follows whether they are set; what they say is left
 * @param complete whether every row that the events make must be there; where old rows are deleted
 *     by a policy, a rebuild mends those that are left and brings none back
 */
public record ReadTable(String name, List<String> kept, List<String> whenSet, boolean complete) {

  public ReadTable {
    kept = List.copyOf(kept);
    whenSet = List.copyOf(whenSet);
  }

  public static ReadTable of(String name) {
    return new ReadTable(name, List.of(), List.of(), true);
  }

  public ReadTable keeping(String... columns) {
    return new ReadTable(name, List.of(columns), whenSet, complete);
  }

  public ReadTable keepingWhenSet(String... columns) {
    return new ReadTable(name, kept, List.of(columns), complete);
  }

  public ReadTable withoutOldRows() {
    return new ReadTable(name, kept, whenSet, false);
  }
}
