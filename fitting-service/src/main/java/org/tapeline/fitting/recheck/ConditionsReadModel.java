package org.tapeline.fitting.recheck;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.fitting.recheck.RecheckCauseEvent.ConditionsRecorded;
import org.tapeline.fitting.recheck.RecheckCauseEvent.HairChanged;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What was told of fields and of hair, the newest of each. */
@Singleton
class ConditionsReadModel {
  @Produces
  @Singleton
  ReadModel conditions() {
    return ReadModel.of("conditions", ReadTable.of("field_conditions"), ReadTable.of("hair_change"))
        .fromJournal(
            RecheckCauseEvent.class,
            event -> {
              switch ((RecheckCauseEvent) event.data()) {
                case ConditionsRecorded e -> FieldConditionsRow.show(e);
                case HairChanged e -> HairChangeRow.show(e);
              }
            });
  }
}
