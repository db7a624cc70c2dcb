package org.tapeline.sizing;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.rebuild.Kept;
import org.tapeline.sizing.chart.ChartPublished;
import org.tapeline.sizing.fitting.WhenFitPassedThenKeepSize;
import org.tapeline.sizing.mix.SizeMixForecast;
import org.tapeline.sizing.mix.UsableHelmets;
import org.tapeline.sizing.remeasure.RemeasureDue;
import org.tapeline.sizing.roster.PlayerEvent.HeadCorrected;
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
        .with("head-corrected", 1, HeadCorrected.class)
        .with("size-advised", 1, SizeAdvised.class)
        .with("chart-published", 1, ChartPublished.class)
        .with("size-mix-forecast", 1, SizeMixForecast.class)
        .with("remeasure-due", 1, RemeasureDue.class);
  }

  @Produces
  @Singleton
  Kept kept() {
    return Kept.besideTheJournal()
        .table("model_offset", "what was learned, by the charts and heads of each moment")
        .table("remeasure_asked", "for which head it was asked, so that it is asked once")
        .table("chart_draft", "charts that nobody has published yet");
  }

  @Produces
  @Singleton
  Subscription subscription(WhenFitPassedThenKeepSize passed, UsableHelmets helmets) {
    return helmets.declareOn(passed.declareOn(Subscription.named("sizing")));
  }
}
