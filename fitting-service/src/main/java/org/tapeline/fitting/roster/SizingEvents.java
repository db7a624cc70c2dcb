package org.tapeline.fitting.roster;

import static java.util.stream.Collectors.toSet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** Copies what sizing says of players, advice and charts. */
@ApplicationScoped
public class SizingEvents {
  private final RosterChange change;
  private final HeadNews news;

  SizingEvents(RosterChange change, HeadNews news) {
    this.change = change;
    this.news = news;
  }

  record PlayerDetails(
      UUID player, String number, String givenName, String familyName, String team, String field) {}

  record GuardianDetails(UUID guardian, List<UUID> players) {}

  record PlayerEnrolled(UUID player, String team, String field) {}

  record PlayerMoved(UUID player, String team, String field) {}

  record PlayerLeft(UUID player) {}

  record HeadMeasured(UUID player, Instant at) {}

  record RemeasureDue(UUID player, Instant at) {}

  record SizeAdvised(UUID player, List<Advice> advice) {
    record Advice(String model, Optional<String> size, Optional<String> second, String reason) {}
  }

  record ChartPublished(String model, List<Size> sizes) {
    record Size(String size) {}
  }

  public void declareOn(Subscription subscription) {
    subscription
        .latest("people")
        .events("sizing.events")
        .on("org.tapeline.sizing.player-details.v1", PlayerDetails.class, (d, e) -> details(d))
        .onErased("people", "org.tapeline.sizing.player-details", SizingEvents::erase)
        .on(
            "org.tapeline.sizing.guardian-details.v1",
            GuardianDetails.class,
            (d, e) -> Guardianship.keep(d.guardian(), d.players()))
        .onErased("people", "org.tapeline.sizing.guardian-details", Guardianship::eraseGuardian)
        .on("org.tapeline.sizing.player-enrolled.v1", PlayerEnrolled.class, this::enrolled)
        .on("org.tapeline.sizing.player-moved.v1", PlayerMoved.class, this::moved)
        .on("org.tapeline.sizing.player-left.v1", PlayerLeft.class, this::left)
        .on("org.tapeline.sizing.size-advised.v1", SizeAdvised.class, this::advised)
        .on("org.tapeline.sizing.chart-published.v1", ChartPublished.class, (d, e) -> chart(d))
        .on("org.tapeline.sizing.head-measured.v1", HeadMeasured.class, this::measured)
        .on("org.tapeline.sizing.head-corrected.v1", HeadMeasured.class, this::measured)
        .on("org.tapeline.sizing.remeasure-due.v1", RemeasureDue.class, this::remeasure)
        .ignoring("org.tapeline.sizing.size-mix-forecast.v1");
  }

  /** Names only: team and field come from the player's own stream, which has an order. */
  private static void details(PlayerDetails d) {
    PlayerCopy row = PlayerCopy.of(d.player());
    row.number = d.number();
    row.givenName = d.givenName();
    row.familyName = d.familyName();
    row.persistAndFlush();
  }

  private static void erase(String player) {
    Guardianship.erasePlayer(UUID.fromString(player));
    PlayerCopy row = PlayerCopy.findById(UUID.fromString(player));
    if (row != null) {
      row.number = null;
      row.givenName = null;
      row.familyName = null;
      row.persistAndFlush();
    }
  }

  private void enrolled(PlayerEnrolled d, ReceivedEvent event) {
    PlayerCopy row = PlayerCopy.of(d.player());
    row.team = d.team();
    row.field = d.field();
    row.onRoster = true;
    row.persistAndFlush();
    change.enrolled(d.player(), event);
  }

  private void moved(PlayerMoved d, ReceivedEvent event) {
    PlayerCopy row = PlayerCopy.of(d.player());
    row.team = d.team();
    row.field = d.field();
    row.persistAndFlush();
    change.moved(d.player(), event);
  }

  private void left(PlayerLeft d, ReceivedEvent event) {
    PlayerCopy row = PlayerCopy.of(d.player());
    row.onRoster = false;
    row.persistAndFlush();
    change.left(d.player(), event);
  }

  /** The newest counts, in whichever order measuring and asking to measure are heard of. */
  private void measured(HeadMeasured d, ReceivedEvent event) {
    PlayerCopy row = PlayerCopy.of(d.player());
    row.measuredAt = later(row.measuredAt, d.at());
    row.persistAndFlush();
    news.head(d.player(), event);
  }

  private void remeasure(RemeasureDue d, ReceivedEvent event) {
    PlayerCopy row = PlayerCopy.of(d.player());
    row.remeasureDueAt = later(row.remeasureDueAt, d.at());
    row.persistAndFlush();
    news.head(d.player(), event);
  }

  private static Instant later(Instant known, Instant heard) {
    return known == null || heard.isAfter(known) ? heard : known;
  }

  private void advised(SizeAdvised d, ReceivedEvent event) {
    Set<String> models = d.advice().stream().map(SizeAdvised.Advice::model).collect(toSet());
    AdvisedSizeCopy.of(d.player()).stream()
        .filter(row -> !models.contains(row.model))
        .forEach(AdvisedSizeCopy::delete);
    AdvisedSizeCopy.flush();
    for (SizeAdvised.Advice advice : d.advice()) {
      AdvisedSizeCopy row = AdvisedSizeCopy.of(d.player(), advice.model());
      row.size = advice.size().orElse(null);
      row.second = advice.second().orElse(null);
      row.reason = advice.reason();
      row.advisedAt = event.time();
      row.persistAndFlush();
    }
    news.head(d.player(), event);
  }

  private static void chart(ChartPublished d) {
    ModelSize.replace(d.model(), d.sizes().stream().map(ChartPublished.Size::size).toList());
  }
}
