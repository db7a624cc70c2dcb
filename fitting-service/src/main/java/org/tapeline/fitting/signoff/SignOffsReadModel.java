package org.tapeline.fitting.signoff;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The sign-offs as their streams tell; of old ones the conditions stand in the fit session. */
@Singleton
class SignOffsReadModel {
  private static final String WITHOUT_CONDITIONS = "org.tapeline.fitting.signed-off.v1";

  @Produces
  @Singleton
  ReadModel signOffs(Journal journal) {
    return ReadModel.of("sign-offs", ReadTable.of("sign_off"))
        .fromJournal(SignOffEvent.class, event -> show(journal, event));
  }

  private static void show(Journal journal, RecordedEvent event) {
    SignOffRow.show((SignOffEvent) event.data());
    if (event.type().equals(WITHOUT_CONDITIONS)) {
      SignedOff signedOff = (SignedOff) event.data();
      StreamName session = StreamName.of("session", signedOff.session(), signedOff.player());
      SignOffRow row = SignOffRow.findById(signedOff.player());
      journal.load(session).stream()
          .map(RecordedEvent::data)
          .filter(FitPassed.class::isInstance)
          .map(FitPassed.class::cast)
          .forEach(passed -> row.fittedUnder(SignOffs.conditions(passed)));
      row.persistAndFlush();
    }
  }
}
