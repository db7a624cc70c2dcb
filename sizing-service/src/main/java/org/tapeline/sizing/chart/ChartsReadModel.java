package org.tapeline.sizing.chart;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Which models have a chart; in which unit it was written is not said in the event. */
@Singleton
class ChartsReadModel {
  @Produces
  @Singleton
  ReadModel charts() {
    return ReadModel.of("charts", ReadTable.of("size_chart").keeping("unit"))
        .fromJournal(
            ChartPublished.class,
            event -> {
              ChartPublished published = (ChartPublished) event.data();
              ChartRow.of(published.model()).version(published.version());
            });
  }
}
