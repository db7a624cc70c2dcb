package org.tapeline.inventory.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is where: a line of cells for each of one kind, a column for each of another, and totals.
 *
 * @param columns what the columns are called
 * @param totals one cell a column, and one for all
 */
public record Grid(List<String> columns, List<Row> rows, List<Cell> totals) {

  /**
   * What is at one place of one kind.
   *
   * @param free to be given out; less than 0 is a count to do
   * @param kept for re-fits, or for players by a plan
   * @param out players have it
   * @param aside out of use for now
   * @param waiting re-fits that wait for it here
   * @param href where these are listed; empty for totals
   */
  public record Cell(
      int free, int kept, int out, int aside, int waiting, boolean countAgain, String href) {
    public static final Cell NONE = new Cell(0, 0, 0, 0, 0, false, "");

    public boolean isNothing() {
      return free == 0 && kept == 0 && out == 0 && aside == 0 && waiting == 0 && !countAgain;
    }

    public boolean isShort() {
      return waiting > 0;
    }

    Cell plus(Cell other) {
      return new Cell(
          free + other.free,
          kept + other.kept,
          out + other.out,
          aside + other.aside,
          waiting + other.waiting,
          countAgain || other.countAgain,
          "");
    }
  }

  /** A line; its last cell is its total. */
  public record Row(String label, String meta, List<Cell> cells, Cell total) {}

  /** A kind of row with its words. */
  public record Label(String code, String said, String meta) {}

  /** Puts cells by row and column code in order; what is nowhere becomes an empty cell. */
  static Grid of(List<Label> rows, List<Label> columns, Map<List<String>, Cell> cells) {
    List<Row> lines = new ArrayList<>();
    Map<String, Cell> totals = new LinkedHashMap<>();
    columns.forEach(c -> totals.put(c.code(), Cell.NONE));
    Cell all = Cell.NONE;
    for (Label row : rows) {
      List<Cell> line = new ArrayList<>();
      Cell sum = Cell.NONE;
      for (Label column : columns) {
        Cell cell = cells.getOrDefault(List.of(row.code(), column.code()), Cell.NONE);
        line.add(cell);
        sum = sum.plus(cell);
        totals.merge(column.code(), cell, Cell::plus);
      }
      all = all.plus(sum);
      lines.add(new Row(row.said(), row.meta(), line, sum));
    }
    List<Cell> last = new ArrayList<>(totals.values());
    last.add(all);
    return new Grid(columns.stream().map(Label::said).toList(), lines, last);
  }
}
