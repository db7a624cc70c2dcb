package org.tapeline.inventory.chart;

import static org.tapeline.inventory.chart.Bands.said;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Draws charts; the same records give the same picture. */
public final class Charts {
  private static final Logger LOG = Logger.getLogger(Charts.class.getName());

  private Charts() {}

  /**
   * A machine without fonts cannot measure the words of a picture: then there is none, and the page
   * shows the numbers.
   */
  private static String drawn(Supplier<String> drawing) {
    try {
      return drawing.get();
    } catch (RuntimeException | LinkageError | InternalError e) {
      LOG.log(Level.WARNING, "No chart could be drawn; is fontconfig with a font installed?", e);
      return "";
    }
  }

  public static Picture of(BandedBars chart) {
    boolean marked = !chart.markSaid().isEmpty();
    List<String> columns =
        new ArrayList<>(List.of("", chart.valueSaid(), chart.bandSaid() + ", from", "to"));
    if (marked) {
      columns.add(chart.markSaid());
    }
    List<List<String>> rows = new ArrayList<>();
    for (BandedBars.Bar bar : chart.bars()) {
      List<String> row =
          new ArrayList<>(
              List.of(bar.label(), said(bar.value()), said(bar.low()), said(bar.high())));
      if (marked) {
        row.add(bar.mark().isPresent() ? said(bar.mark().getAsDouble()) : "");
      }
      rows.add(row);
    }
    return new Picture(
        chart.title(),
        chart.says(),
        drawn(() -> BarsDrawing.svg(chart, false)),
        drawn(() -> BarsDrawing.svg(chart, true)),
        columns,
        rows);
  }

  public static Picture of(BandedLines chart) {
    List<List<String>> rows = new ArrayList<>();
    for (BandedLines.Line line : chart.lines()) {
      for (BandedLines.Point p : line.points()) {
        rows.add(
            List.of(
                line.label(),
                String.valueOf(p.step()),
                said(p.value()),
                said(p.low()),
                said(p.high())));
      }
    }
    return new Picture(
        chart.title(),
        chart.says(),
        drawn(() -> LinesDrawing.svg(chart, false)),
        drawn(() -> LinesDrawing.svg(chart, true)),
        List.of("", chart.stepSaid(), chart.unit(), chart.bandSaid() + ", from", "to"),
        rows);
  }

  public static Picture of(StockLevel chart) {
    return new Picture(
        chart.title(),
        chart.says(),
        drawn(() -> LevelDrawing.svg(chart, false)),
        drawn(() -> LevelDrawing.svg(chart, true)),
        List.of("Day", chart.unit()),
        chart.days().stream().map(d -> List.of(d.day().toString(), said(d.pieces()))).toList());
  }

  public static Picture of(StackedBars chart) {
    List<String> columns = new ArrayList<>(List.of(chart.barSaid()));
    columns.addAll(chart.parts());
    columns.add("All");
    List<List<String>> rows = new ArrayList<>();
    for (String bar : chart.bars().keySet()) {
      List<String> row = new ArrayList<>(List.of(bar));
      chart.parts().forEach(part -> row.add(said(chart.value(bar, part))));
      row.add(said(chart.total(bar)));
      rows.add(row);
    }
    return new Picture(
        chart.title(),
        chart.says(),
        drawn(() -> StackDrawing.svg(chart, false)),
        drawn(() -> StackDrawing.svg(chart, true)),
        columns,
        rows);
  }
}
