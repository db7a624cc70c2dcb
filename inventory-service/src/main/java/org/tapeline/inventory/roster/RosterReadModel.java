package org.tapeline.inventory.roster;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.inventory.advice.AdvisedSizes;
import org.tapeline.inventory.forecast.SizeForecasts;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.ReadTable;

/** What sizing says of players and sizes, copied again. */
@Singleton
class RosterReadModel {
  @Produces
  @Singleton
  ReadModel players(PlayerFields fields, AdvisedSizes advised) {
    return ReadModel.of("players", ReadTable.of("player_field"), ReadTable.of("advised_size"))
        .fromPeers(copies -> advised.declareOn(fields.declareOn(copies)));
  }

  @Produces
  @Singleton
  ReadModel forecasts(SizeForecasts forecasts) {
    return ReadModel.of("forecasts", ReadTable.of("size_forecast")).fromPeers(forecasts::declareOn);
  }
}
