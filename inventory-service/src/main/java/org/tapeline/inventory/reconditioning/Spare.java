package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.tapeline.inventory.reconditioning.BatchPlan.Shelf;
import org.tapeline.inventory.reconditioning.FleetHelmet.Kind;
import org.tapeline.inventory.reconditioning.Needs.At;

/** How many usable helmets there are of each size, at each place and in all, and how many went. */
final class Spare {
  private final Needs needs;
  private final Map<At, Integer> usable = new HashMap<>();
  private final Map<At, Integer> sent = new HashMap<>();
  private final Map<Kind, Integer> usableInAll = new HashMap<>();
  private final Map<Kind, Integer> sentInAll = new HashMap<>();

  private Spare(Needs needs) {
    this.needs = needs;
  }

  /**
   * @param through who can be worn through this day counts
   */
  static Spare of(List<Standing> fleet, Needs needs, LocalDate through) {
    Spare spare = new Spare(needs);
    for (Standing s : fleet) {
      int one = s.usableThrough(through) ? 1 : 0;
      spare.usable.merge(at(s.helmet()), one, Integer::sum);
      spare.usableInAll.merge(s.helmet().kind(), one, Integer::sum);
    }
    return spare;
  }

  private static At at(FleetHelmet helmet) {
    return new At(helmet.kind(), helmet.place());
  }

  /** Where it is needed, the place first; empty when it can be spared. */
  Optional<Shelf> neededAt(FleetHelmet helmet) {
    Shelf here = atPlace(at(helmet));
    Shelf everywhere = inAll(helmet.kind());
    if (here.stays() <= here.need().orElse(0)) {
      return Optional.of(here);
    }
    // Where nobody says how many are needed, none is spared.
    return everywhere.stays() <= everywhere.need().orElse(Integer.MAX_VALUE)
        ? Optional.of(everywhere)
        : Optional.empty();
  }

  void send(FleetHelmet helmet) {
    sent.merge(at(helmet), 1, Integer::sum);
    sentInAll.merge(helmet.kind(), 1, Integer::sum);
  }

  /** Its size over all places. */
  Shelf shelf(FleetHelmet helmet) {
    return inAll(helmet.kind());
  }

  private Shelf inAll(Kind kind) {
    return new Shelf(
        kind,
        Optional.empty(),
        usableInAll.getOrDefault(kind, 0),
        needs.inAll(kind).stream().boxed().findFirst(),
        sentInAll.getOrDefault(kind, 0));
  }

  private Shelf atPlace(At at) {
    return new Shelf(
        at.kind(),
        Optional.of(at.place()),
        usable.getOrDefault(at, 0),
        Optional.of(needs.at(at.kind(), at.place())),
        sent.getOrDefault(at, 0));
  }

  /** All of them by model and size, each with all places together first. */
  List<Shelf> shelves() {
    Comparator<Kind> byKind = Comparator.comparing(Kind::model).thenComparing(Kind::size);
    TreeSet<Kind> kinds = new TreeSet<>(byKind);
    kinds.addAll(usableInAll.keySet());
    kinds.addAll(needs.inAll().keySet());
    TreeSet<At> places =
        new TreeSet<>(Comparator.comparing(At::kind, byKind).thenComparing(At::place));
    places.addAll(usable.keySet());
    places.addAll(needs.atPlace().keySet());
    List<Shelf> shelves = new ArrayList<>();
    for (Kind kind : kinds) {
      shelves.add(inAll(kind));
      places.stream().filter(at -> at.kind().equals(kind)).forEach(at -> shelves.add(atPlace(at)));
    }
    return List.copyOf(shelves);
  }
}
