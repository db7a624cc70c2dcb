package org.tapeline.fitting.helmet;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What inventory says of helmets and holds, copied again and told to nobody. */
@Singleton
class HelmetsReadModel {
  @Produces
  @Singleton
  ReadModel helmets(HoldHelmets ofHolds) {
    HelmetEvents copies =
        new HelmetEvents((helmet, why, holder, event) -> {}, (tag, event) -> {}, ofHolds);
    HoldEvents holds = new HoldEvents(ofHolds);
    return ReadModel.of(
            "helmets", ReadTable.of("helmet"), ReadTable.of("hold"), ReadTable.of("hold_helmet"))
        .fromPeers(
            on -> {
              copies.declareOn(on);
              holds.declareOn(on);
            });
  }
}
