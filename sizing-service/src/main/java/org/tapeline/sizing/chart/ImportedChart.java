package org.tapeline.sizing.chart;

import java.util.List;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/**
 * A chart as a file had it, without a fault.
 *
 * @param unit in which it was written
 * @param warnings what somebody should look at before it is published
 */
public record ImportedChart(
    String model, ChartUnit unit, List<SizeRange> sizes, List<RowError> warnings) {}
