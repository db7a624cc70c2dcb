package org.tapeline.fitting.concussion;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Who is out of play, as the players' streams tell. */
@Singleton
class OutOfPlayReadModel {
  @Produces
  @Singleton
  ReadModel outOfPlay() {
    return ReadModel.of("out-of-play", ReadTable.of("out_of_play"))
        .fromJournal(
            ConcussionEvent.class, event -> OutOfPlayRow.show((ConcussionEvent) event.data()));
  }
}
