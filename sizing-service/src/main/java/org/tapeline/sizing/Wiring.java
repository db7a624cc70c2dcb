package org.tapeline.sizing;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.sizing.chart.ChartPublished;
import org.tapeline.sizing.fitting.WhenFitPassedThenKeepSize;
import org.tapeline.sizing.roster.PlayerEvent.HeadMeasured;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;
import org.tapeline.sizing.roster.PlayerEvent.PlayerLeft;
import org.tapeline.sizing.roster.PlayerEvent.PlayerMoved;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;

/** What the service says, and what it listens to. */
@Singleton
public class Wiring {

  @Produces
  @Singleton
  EventTypes eventTypes() {
    return EventTypes.of("sizing")
        .with("player-enrolled", 1, PlayerEnrolled.class)
        .with("player-moved", 1, PlayerMoved.class)
        .with("player-left", 1, PlayerLeft.class)
        .with("head-measured", 1, HeadMeasured.class)
        .with("size-advised", 1, SizeAdvised.class)
        .with("chart-published", 1, ChartPublished.class);
  }

  @Produces
  @Singleton
  Subscription subscription(WhenFitPassedThenKeepSize passed) {
    return passed.declareOn(Subscription.named("sizing"));
  }
}
