package org.tapeline.fitting.roster;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What sizing says of players, advice and charts, copied again and told to nobody. */
@Singleton
class RosterReadModel {
  private static final RosterChange NOBODY =
      new RosterChange() {
        @Override
        public void enrolled(UUID player, ReceivedEvent event) {
          // What follows has followed.
        }

        @Override
        public void moved(UUID player, ReceivedEvent event) {
          // What follows has followed.
        }

        @Override
        public void left(UUID player, ReceivedEvent event) {
          // What follows has followed.
        }
      };

  @Produces
  @Singleton
  ReadModel players() {
    return ReadModel.of(
            "players",
            ReadTable.of("player"),
            ReadTable.of("guardianship"),
            ReadTable.of("advised_size"),
            ReadTable.of("model_size"))
        .fromPeers(new SizingEvents(NOBODY, (player, event) -> {})::declareOn);
  }
}
