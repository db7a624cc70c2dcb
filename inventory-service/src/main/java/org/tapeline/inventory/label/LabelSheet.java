package org.tapeline.inventory.label;

/**
 * A sheet of labels as it lies in the printer, all in millimetres.
 *
 * @param leftMm from the edge of the paper to the first label
 * @param gapAcrossMm between two labels of a row
 * @param insideMm what stays white along each edge of a label: at the edge of the paper a printer
 *     prints nothing
 */
public record LabelSheet(
    String code,
    String name,
    double pageWidthMm,
    double pageHeightMm,
    int columns,
    int rows,
    double leftMm,
    double topMm,
    double labelWidthMm,
    double labelHeightMm,
    double gapAcrossMm,
    double gapDownMm,
    double insideMm) {
  private static final double SLACK_MM = 0.05;

  /** The smallest label that holds a code that a phone reads, and a tag beside it. */
  private static final double LEAST_WIDTH_MM = 45;

  private static final double LEAST_HEIGHT_MM = 20;

  /** Where a label is; the page counted from 0. */
  public record Spot(int page, double leftMm, double topMm) {}

  /**
   * @throws IllegalArgumentException when the labels do not fit on the paper, or are too small
   */
  public LabelSheet {
    if (code == null || !code.matches("[a-z0-9-]{2,30}") || name == null || name.isBlank()) {
      throw new IllegalArgumentException("A sheet has a code and a name");
    }
    if (columns < 1
        || rows < 1
        || leftMm < 0
        || topMm < 0
        || gapAcrossMm < 0
        || gapDownMm < 0
        || insideMm < 0
        || insideMm > 6) {
      throw new IllegalArgumentException(
          code + " has a label, no measure below zero, and at most 6 mm inside");
    }
    if (labelWidthMm < LEAST_WIDTH_MM || labelHeightMm < LEAST_HEIGHT_MM) {
      throw new IllegalArgumentException(code + ": labels are at least 45 mm by 20 mm");
    }
    if (leftMm + columns * labelWidthMm + (columns - 1) * gapAcrossMm > pageWidthMm + SLACK_MM
        || topMm + rows * labelHeightMm + (rows - 1) * gapDownMm > pageHeightMm + SLACK_MM) {
      throw new IllegalArgumentException(code + ": the labels are wider or higher than the page");
    }
  }

  public int perPage() {
    return columns * rows;
  }

  /**
   * Along the rows, then down.
   *
   * @param number of the label, from 0, counted from the first one of the first page
   */
  public Spot spot(int number) {
    int onPage = number % perPage();
    return new Spot(
        number / perPage(),
        leftMm + onPage % columns * (labelWidthMm + gapAcrossMm),
        topMm + onPage / columns * (labelHeightMm + gapDownMm));
  }

  /**
   * How wide and high the code is: what the label leaves, and never so small that none reads it.
   */
  public double codeMm() {
    return Math.min(labelHeightMm - 2 * insideMm, labelWidthMm * 0.45);
  }

  /**
   * How large a bold tag can be written beside the code, in points: a capital is about 0.68 wide.
   */
  public double tagPoints(String tag) {
    double millimetres = (labelWidthMm - codeMm() - 2 * insideMm - 2) / (tag.length() * 0.68);
    return Math.floor(Math.min(20, millimetres * 72 / 25.4) * 10) / 10;
  }
}
