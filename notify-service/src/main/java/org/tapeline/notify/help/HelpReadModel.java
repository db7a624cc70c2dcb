package org.tapeline.notify.help;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Who asked for a call, and who called, as the calls' streams tell. */
@Singleton
class HelpReadModel {
  @Produces
  @Singleton
  ReadModel calls() {
    return ReadModel.of("calls", ReadTable.of("help_call"))
        .fromJournal(HelpAsked.class, event -> HelpCallRow.insert((HelpAsked) event.data()))
        .fromJournal(
            HelpAnswered.class, event -> HelpCallRow.answered((HelpAnswered) event.data()));
  }
}
