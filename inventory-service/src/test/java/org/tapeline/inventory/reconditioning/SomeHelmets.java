package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.inventory.reconditioning.FleetHelmet.Kind;
import org.tapeline.inventory.reconditioning.Needs.At;
import org.tapeline.inventory.reconditioning.Standing.Reason;
import org.tapeline.inventory.reconditioning.Standing.Why;

/** Helmets, needs and a policy for examples. */
final class SomeHelmets {
  /** In the season, which ends on November 15; what goes is back on October 1. */
  static final LocalDate AUGUST = LocalDate.of(2026, 8, 20);

  static final LocalDate BEFORE_BACK = LocalDate.of(2026, 9, 10);
  static final LocalDate MID_SEASON = LocalDate.of(2026, 10, 20);
  static final LocalDate NEXT_YEAR = LocalDate.of(2027, 3, 1);
  static final Kind SMALL = new Kind("model-a", "youth-small");
  static final ReconditioningPolicy POLICY =
      new ReconditioningPolicy(
          1, "example", "08-01", "11-15", 6, 40, 0, 365, "USD", 4500, List.of("recon-1"));

  private SomeHelmets() {}

  static FleetHelmet helmet(String tag, String place, String state) {
    return new FleetHelmet(
        tag,
        SMALL.model(),
        SMALL.size(),
        place,
        state,
        LocalDate.of(2023, 5, 15),
        Optional.of(NEXT_YEAR),
        Optional.empty());
  }

  /** A due helmet on a shelf, that can be worn through that day. */
  static Standing due(String tag, String place, LocalDate through) {
    return due(helmet(tag, place, "available"), through);
  }

  static Standing due(FleetHelmet helmet, LocalDate through) {
    return new Standing(
        helmet,
        through,
        LocalDate.of(2032, 5, 14),
        List.of(new Reason(Why.CERTIFICATION, through)));
  }

  static Standing notDue(String tag, String place) {
    return new Standing(
        helmet(tag, place, "available"), NEXT_YEAR, LocalDate.of(2032, 5, 14), List.of());
  }

  static Needs needs(int inAll) {
    return new Needs(Map.of(SMALL, inAll), Map.of());
  }

  static Needs needs(int inAll, String place, int there) {
    return new Needs(Map.of(SMALL, inAll), Map.of(new At(SMALL, place), there));
  }

  static Needs notKnown() {
    return new Needs(new HashMap<>(), new HashMap<>());
  }
}
