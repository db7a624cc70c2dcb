package org.tapeline.sizing.draft;

import java.util.List;
import java.util.UUID;
import org.tapeline.sizing.chart.ChartUnit;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

/**
 * A chart that waits for somebody to publish it.
 *
 * @param draft another one for each import
 * @param unit in which it was written
 * @param warnings what was striking in its rows
 */
record ChartDraft(
    String model, UUID draft, ChartUnit unit, List<SizeRange> sizes, List<RowError> warnings) {}
