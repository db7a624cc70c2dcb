package org.tapeline.sizing.mix;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Which helmets are usable, copied again. */
@Singleton
class HelmetsReadModel {
  @Produces
  @Singleton
  ReadModel helmets(UsableHelmets helmets) {
    return ReadModel.of("helmets", ReadTable.of("usable_helmet")).fromPeers(helmets::declareOn);
  }
}
