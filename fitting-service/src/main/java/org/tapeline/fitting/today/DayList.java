package org.tapeline.fitting.today;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.recheck.RecheckPlans;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.signoff.Sideline;
import org.tapeline.fitting.signoff.WearState;
import org.tapeline.fitting.today.DayOrder.Group;
import org.tapeline.fitting.today.DayOrder.Rank;
import org.tapeline.journal.quarkus.access.Caller;

/** The players of a fitter's fields of whom something is to be done, the riskiest first. */
@ApplicationScoped
public class DayList {
  private final Sideline sideline;
  private final RecheckPlans plans;
  private final Caller caller;
  private final Clock clock;

  DayList(Sideline sideline, RecheckPlans plans, Caller caller, Clock clock) {
    this.sideline = sideline;
    this.plans = plans;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * A player to see to.
   *
   * @param group code of the group: do-not-wear, not-known, overdue, due-today, never-fitted or
   *     due-soon
   * @param groupSaid the group in words
   * @param why in words
   * @param tag the helmet of the sign-off that holds; empty for none
   */
  public record Item(
      UUID player,
      String name,
      String number,
      String team,
      String field,
      String group,
      String groupSaid,
      WearState state,
      String why,
      String tag) {}

  /**
   * The list.
   *
   * @param asOf up to when it is true; empty when that is not known
   */
  public record Day(Optional<Instant> asOf, List<Item> items) {}

  private record Ranked(Rank rank, Item item) {}

  /** Asked for at this moment. */
  public Day now() {
    Instant now = clock.instant();
    List<PlayerCopy> own =
        PlayerCopy.onRoster().stream().filter(p -> caller.mayWorkAt(p.field)).toList();
    Sideline.Seen seen = sideline.seen(own);
    Map<String, ZoneId> zones = new HashMap<>();
    List<Ranked> ranked = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      PlayerCopy player = own.get(i);
      ZoneId zone = zones.computeIfAbsent(player.field, Place::zoneOf);
      item(player, seen.looked().get(i), zone, now).ifPresent(ranked::add);
    }
    return new Day(
        seen.asOf(),
        ranked.stream().sorted(Comparator.comparing(Ranked::rank)).map(Ranked::item).toList());
  }

  private Optional<Ranked> item(
      PlayerCopy player, Sideline.Looked looked, ZoneId zone, Instant now) {
    WearState state = looked.line().state();
    DayOrder.Seen seen = new DayOrder.Seen(player.player, state, looked.checks(), zone);
    return DayOrder.rank(seen, now, plans.inForce().dueSoonDays())
        .map(
            rank ->
                new Ranked(
                    rank,
                    new Item(
                        player.player,
                        player.name(),
                        player.number == null ? "" : player.number,
                        player.team,
                        player.field,
                        code(rank.group()),
                        rank.group().said(),
                        state,
                        why(state, looked.checks(), rank, zone),
                        looked.line().tag())));
  }

  private static String why(WearState state, List<Check> checks, Rank rank, ZoneId zone) {
    return switch (rank.group()) {
      case DO_NOT_WEAR, NOT_KNOWN, NEVER_FITTED -> state.reason();
      case OVERDUE -> state.reason() + " (since " + Words.day(rank.since(), zone) + ")";
      case DUE_TODAY -> state.reason().isEmpty() ? ahead(checks, rank, zone) : state.reason();
      case DUE_SOON -> ahead(checks, rank, zone);
    };
  }

  private static String ahead(List<Check> checks, Rank rank, ZoneId zone) {
    return checks.stream()
            .filter(check -> check.dueAt().equals(rank.since()))
            .map(Check::said)
            .collect(Collectors.joining("; "))
        + " on "
        + Words.day(rank.since(), zone)
        + ", "
        + Words.time(rank.since(), zone);
  }

  private static String code(Group group) {
    return group.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
