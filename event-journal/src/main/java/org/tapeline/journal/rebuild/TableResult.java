package org.tapeline.journal.rebuild;

import java.util.List;

/**
 * How a table compares with what the events say.
 *
 * @param rows that the events make
 * @param equal rows that stood there just so
 * @param missing rows that were not there
 * @param extra rows that no event accounts for
 * @param changed rows that said something else
 * @param old rows that were not there, of a table whose old rows are deleted by a policy
 * @param examples the first of the differing rows: what was wrong, and the key
 */
public record TableResult(
    String model,
    String table,
    long rows,
    long equal,
    long missing,
    long extra,
    long changed,
    long old,
    List<String> examples) {

  public long differing() {
    return missing + extra + changed;
  }
}
