package org.tapeline.sizing.roster;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Heads, corrections and advice, as the players' streams tell. */
@Singleton
class HeadsReadModel {
  @Produces
  @Singleton
  ReadModel heads(HeadTables tables) {
    return ReadModel.of(
            "heads", ReadTable.of("head"), ReadTable.of("head_correction"), ReadTable.of("advice"))
        .fromJournal(
            PlayerEvent.class, event -> tables.show((PlayerEvent) event.data(), event.version()));
  }
}
