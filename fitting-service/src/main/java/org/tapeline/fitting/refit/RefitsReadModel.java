package org.tapeline.fitting.refit;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The re-fit cases as their streams tell, and what inventory says of their replacements. */
@Singleton
class RefitsReadModel {
  @Produces
  @Singleton
  ReadModel refits() {
    return ReadModel.of(
            "refits",
            // A player who moves to another team of the same field takes the case along.
            ReadTable.of("refit_case").keeping("team"),
            ReadTable.of("refit_need"),
            ReadTable.of("helmet_reservation"))
        .fromJournal(RefitEvent.class, event -> RefitCaseRow.show((RefitEvent) event.data()))
        .fromPeers(ReplacementCopies::declareOn);
  }
}
