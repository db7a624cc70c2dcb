package org.tapeline.fitting.session;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.rebuild.Folds;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The fit sessions as their streams tell. */
@Singleton
class SessionsReadModel {
  @Produces
  @Singleton
  ReadModel sessions(Journal journal) {
    Folds<FitSession> folds =
        new Folds<>(journal, id -> FitSession.NONE, (s, e) -> FitSessionEvolver.evolve(s, of(e)));
    return ReadModel.of("sessions", ReadTable.of("fit_session"))
        .fromJournal(
            FitSessionEvent.class, event -> FitSessionRow.show(folds.after(event), of(event).at()));
  }

  private static FitSessionEvent of(RecordedEvent event) {
    return (FitSessionEvent) event.data();
  }
}
