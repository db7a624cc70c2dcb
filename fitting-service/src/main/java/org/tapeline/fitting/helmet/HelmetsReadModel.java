package org.tapeline.fitting.helmet;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What inventory says of helmets, copied again and told to nobody. */
@Singleton
class HelmetsReadModel {
  @Produces
  @Singleton
  ReadModel helmets() {
    HelmetEvents copies = new HelmetEvents((helmet, why, holder, event) -> {}, (tag, event) -> {});
    return ReadModel.of("helmets", ReadTable.of("helmet")).fromPeers(copies::declareOn);
  }
}
