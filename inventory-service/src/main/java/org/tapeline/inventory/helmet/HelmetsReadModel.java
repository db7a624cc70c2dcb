package org.tapeline.inventory.helmet;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.rebuild.Folds;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** The helmets as their streams tell, and what fitting said of fits in them. */
@Singleton
class HelmetsReadModel {
  @Produces
  @Singleton
  ReadModel helmets(Journal journal, HelmetTable table) {
    Folds<Helmet> lives =
        new Folds<>(journal, Helmet::unknown, (helmet, event) -> Helmet.evolve(helmet, of(event)));
    // For whom a helmet is kept is decided in the rows themselves, by cases and plans.
    return ReadModel.of("helmets", ReadTable.of("helmet").keeping("reserved_for", "planned_for"))
        .fromJournal(HelmetEvent.class, event -> table.show(of(event), lives.after(event)));
  }

  @Produces
  @Singleton
  ReadModel fits(HelmetFits fits) {
    return ReadModel.of("fits", ReadTable.of("helmet_fit")).fromPeers(fits::declareAllOn);
  }

  private static HelmetEvent of(RecordedEvent event) {
    return (HelmetEvent) event.data();
  }
}
