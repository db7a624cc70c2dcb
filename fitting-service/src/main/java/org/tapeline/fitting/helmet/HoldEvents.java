package org.tapeline.fitting.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Subscription;

/**
 * Copies what inventory says of holds, so that a helmet counts as held from the moment at which a
 * hold on it was placed: of many helmets each has its own event, and the last of these may come
 * minutes later.
 */
@ApplicationScoped
public class HoldEvents {
  private final HoldHelmets helmets;

  HoldEvents(HoldHelmets helmets) {
    this.helmets = helmets;
  }

  record HoldPlaced(
      UUID hold,
      Optional<String> model,
      List<String> lots,
      Optional<LocalDate> madeFrom,
      Optional<LocalDate> madeTo,
      List<String> tags) {}

  record HoldLifted(
      UUID hold, String scope, List<String> lots, Optional<String> place, List<String> tags) {}

  public void declareOn(Subscription on) {
    on.events("inventory.events")
        .on("org.tapeline.inventory.hold-placed.v1", HoldPlaced.class, (d, e) -> placed(d))
        .on("org.tapeline.inventory.hold-lifted.v1", HoldLifted.class, (d, e) -> lifted(d));
  }

  private void placed(HoldPlaced d) {
    HoldCopy row = new HoldCopy();
    row.hold = d.hold();
    row.model = d.model().orElse(null);
    row.lots = d.lots();
    row.madeFrom = d.madeFrom().orElse(null);
    row.madeTo = d.madeTo().orElse(null);
    row.persistAndFlush();
    helmets.listed(d.hold(), d.tags());
  }

  /**
   * One that was placed before this service heard of holds has nothing ahead. A scope that is not
   * known here lifts nothing: each helmet's own event follows.
   */
  private void lifted(HoldLifted d) {
    HoldCopy row = HoldCopy.findById(d.hold());
    if (row == null) {
      return;
    }
    switch (d.scope()) {
      case "whole" -> row.lifted = true;
      case "lots" -> row.liftedLots = both(row.liftedLots, d.lots());
      case "place" -> row.liftedPlaces = both(row.liftedPlaces, d.place().stream().toList());
      case "tags" -> helmets.settled(d.hold(), d.tags());
      default -> {}
    }
    row.persistAndFlush();
  }

  private static List<String> both(List<String> before, List<String> more) {
    List<String> all = new ArrayList<>(before);
    all.addAll(more);
    return all;
  }
}
