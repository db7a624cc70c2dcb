package org.tapeline.sizing.fitting;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** Which sizes passed, copied again; nothing is learned from them a second time. */
@Singleton
class PassedSizesReadModel {
  @Produces
  @Singleton
  ReadModel passedSizes() {
    return ReadModel.of("passed-sizes", ReadTable.of("passed_size"))
        .fromPeers(
            copies ->
                copies
                    .events("fitting.events")
                    .on(
                        "org.tapeline.fitting.fit-passed.v1",
                        FitPassed.class,
                        (passed, event) -> PassedSize.show(passed)));
  }
}
