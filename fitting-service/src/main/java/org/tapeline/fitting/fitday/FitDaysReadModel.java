package org.tapeline.fitting.fitday;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The fit days as their streams tell; who has which slot is decided in the slots themselves. */
@Singleton
class FitDaysReadModel {
  @Produces
  @Singleton
  ReadModel fitDays() {
    return ReadModel.of("fit-days", ReadTable.of("fit_day"))
        .fromJournal(FitDayEvent.class, event -> FitDayRow.show((FitDayEvent) event.data()));
  }
}
