package org.tapeline.fitting.refit;

import static java.util.stream.Collectors.toSet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.tapeline.fitting.fitday.SlotSeeker;
import org.tapeline.fitting.roster.Guardianship;
import org.tapeline.fitting.signoff.SignOffRow;

/**
 * Cases as a plan of bookings sees them: how urgent, from when on, whose siblings. Read for all of
 * them at once.
 */
final class SlotSeekers {
  private final Map<UUID, List<RefitNeedRow>> needs;
  private final Map<UUID, Set<UUID>> guardians;
  private final Set<UUID> signedOff;
  private final Set<UUID> seeking;
  private final Instant now;

  private SlotSeekers(Collection<RefitCaseRow> rows, Instant now) {
    Set<UUID> players = rows.stream().map(row -> row.player).collect(toSet());
    this.seeking = rows.stream().map(row -> row.refitCase).collect(toSet());
    this.needs = RefitNeedRow.ofAll(seeking);
    this.guardians = Guardianship.guardiansOf(players);
    this.signedOff = players.isEmpty() ? Set.of() : signedOff(players);
    this.now = now;
  }

  static SlotSeekers of(Collection<RefitCaseRow> rows, Instant now) {
    return new SlotSeekers(rows, now);
  }

  private static Set<UUID> signedOff(Set<UUID> players) {
    List<SignOffRow> live = SignOffRow.list("state = 'signed-off' and player in ?1", players);
    return live.stream().map(row -> row.player).collect(toSet());
  }

  List<RefitRules.Arrival> arrivals(RefitCaseRow row) {
    return needs.getOrDefault(row.refitCase, List.of()).stream()
        .map(RefitNeedRow::arrival)
        .toList();
  }

  boolean stillComing(RefitCaseRow row) {
    return needs.getOrDefault(row.refitCase, List.of()).stream().anyMatch(n -> n.stillComing(now));
  }

  SlotSeeker seeker(RefitCaseRow row, Instant earliest) {
    return new SlotSeeker(
        row.refitCase,
        !signedOff.contains(row.player),
        row.openedAt,
        row.field,
        earliest,
        guardians.getOrDefault(row.player, Set.of()));
  }

  /** The guardians of each open case of a sibling that does not seek a slot itself. */
  Map<UUID, Set<UUID>> siblings() {
    Set<UUID> all = new HashSet<>();
    guardians.values().forEach(all::addAll);
    List<UUID> players = new ArrayList<>(Guardianship.playersOf(all));
    Map<UUID, Set<UUID>> bringers = Guardianship.guardiansOf(players);
    Map<UUID, Set<UUID>> siblings = new HashMap<>();
    for (RefitCaseRow row : RefitCaseRow.openOfAll(players)) {
      if (!seeking.contains(row.refitCase)) {
        siblings.put(row.refitCase, bringers.getOrDefault(row.player, Set.of()));
      }
    }
    return siblings;
  }
}
