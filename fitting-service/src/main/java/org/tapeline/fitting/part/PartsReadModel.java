package org.tapeline.fitting.part;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What inventory says of the parts at the fields, copied again. */
@Singleton
class PartsReadModel {
  @Produces
  @Singleton
  ReadModel parts(PartEvents parts) {
    return ReadModel.of(
            "parts",
            ReadTable.of("part_count"),
            ReadTable.of("part_move"),
            ReadTable.of("part_requested"))
        .fromPeers(copies -> parts.declareOn(copies.events("inventory.events")));
  }
}
