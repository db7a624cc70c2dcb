package org.tapeline.sizing.fitting;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.offset.Offsets;

/** Keeps which size really passed, to show it beside the advice. */
@ApplicationScoped
public class WhenFitPassedThenKeepSize {
  private final EntityManager entities;
  private final Charts charts;
  private final Offsets offsets;

  WhenFitPassedThenKeepSize(EntityManager entities, Charts charts, Offsets offsets) {
    this.entities = entities;
    this.charts = charts;
    this.offsets = offsets;
  }

  /** Sizing handles one event of fitting and names the others, so that a new one is not missed. */
  public Subscription declareOn(Subscription subscription) {
    return subscription
        .events("fitting.events")
        .on("org.tapeline.fitting.fit-passed.v1", FitPassed.class, this::keep)
        .ignoring(
            "org.tapeline.fitting.session-opened.v1",
            "org.tapeline.fitting.helmet-tried.v1",
            "org.tapeline.fitting.check-recorded.v1",
            "org.tapeline.fitting.adjustment-made.v1",
            "org.tapeline.fitting.fit-failed.v1",
            "org.tapeline.fitting.session-abandoned.v1",
            "org.tapeline.fitting.remedy-passed-over.v1",
            "org.tapeline.fitting.entry-corrected.v1",
            "org.tapeline.fitting.session-paused.v1",
            "org.tapeline.fitting.session-resumed.v1",
            "org.tapeline.fitting.pass-taken-back.v1",
            "org.tapeline.fitting.signed-off.v1",
            "org.tapeline.fitting.signed-off.v2",
            "org.tapeline.fitting.signed-off.v3",
            "org.tapeline.fitting.sign-off-withdrawn.v1",
            "org.tapeline.fitting.sign-off-lapsed.v1",
            "org.tapeline.fitting.recheck-due.v1",
            "org.tapeline.fitting.conditions-recorded.v1",
            "org.tapeline.fitting.hair-changed.v1",
            "org.tapeline.fitting.concussion-suspected.v1",
            "org.tapeline.fitting.return-cleared.v1",
            "org.tapeline.fitting.refit-opened.v1",
            "org.tapeline.fitting.refit-booked.v1",
            "org.tapeline.fitting.refit-unbooked.v1",
            "org.tapeline.fitting.refit-closed.v1",
            "org.tapeline.fitting.fit-day-announced.v1",
            "org.tapeline.fitting.fit-day-moved.v1",
            "org.tapeline.fitting.fit-day-cancelled.v1");
  }

  private void keep(FitPassed passed, ReceivedEvent event) {
    learn(passed, Cause.of(event, "offset"));
    PassedSize.show(passed);
  }

  /** What passed says how the chart has to be read, when the head was measured before. */
  private void learn(FitPassed passed, Cause cause) {
    MeasuredHead.before(entities, passed.player(), passed.at())
        .ifPresent(
            head ->
                charts
                    .newest(passed.model())
                    .ifPresent(
                        chart ->
                            offsets.learn(
                                chart, passed.size(), head.mm(), head.spreadMm(), cause)));
  }
}
