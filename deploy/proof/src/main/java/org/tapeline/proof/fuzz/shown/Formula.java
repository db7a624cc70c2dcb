package org.tapeline.proof.fuzz.shown;

/** Cells that a spreadsheet would reckon with instead of showing them. */
final class Formula {
  private static final String BEGINS = "=+-@\t\r";

  private Formula() {}

  /** A plain number is none, though it may begin with a sign. */
  static boolean is(String cell) {
    return !cell.isEmpty()
        && BEGINS.indexOf(cell.charAt(0)) >= 0
        && !cell.matches("[-+]?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]+)?");
  }
}
