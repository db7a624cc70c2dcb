package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tapeline.inventory.place.Places;

/** Reads how all helmets stand and plans what goes now. */
@ApplicationScoped
public class DueList {
  private final Fleet fleet;
  private final HelmetRules rules;
  private final PolicyOnFile policy;
  private final Places places;
  private final Clock clock;

  DueList(Fleet fleet, HelmetRules rules, PolicyOnFile policy, Places places, Clock clock) {
    this.fleet = fleet;
    this.rules = rules;
    this.policy = policy;
    this.places = places;
    this.clock = clock;
  }

  /** The day at the first depot. */
  public LocalDate today() {
    String home = places.all().stream().map(Places.Place::code).findFirst().orElse("");
    return LocalDate.ofInstant(clock.instant(), places.zone(home));
  }

  /** What is due through the end of the season that runs or comes next, if nothing else is said. */
  public LocalDate usualDay() {
    return policy.get().season().endFrom(today());
  }

  /** All helmets but those that are ordered or retired. */
  public List<Standing> standings(LocalDate today, LocalDate by) {
    int near = policy.get().lastAgeNearDays();
    return fleet.helmets().stream()
        .map(h -> DueRules.of(h, rules.of(h.model()), today, by, near))
        .toList();
  }

  /** Those that can be put into a batch are planned for; one that is in a batch is not. */
  public BatchPlan plan(LocalDate today, LocalDate by) {
    Set<String> packing = new HashSet<>(fleet.inBatches());
    List<Standing> all =
        standings(today, by).stream().filter(s -> !packing.contains(s.helmet().tag())).toList();
    List<FleetHelmet> helmets = all.stream().map(Standing::helmet).toList();
    Needs needs = NeedRules.of(fleet.known(), helmets, policy.get().spareShare());
    return BatchPlan.of(today, all, needs, policy.get());
  }
}
