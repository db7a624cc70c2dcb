package org.tapeline.sizing.roster;

import java.util.List;
import java.util.UUID;
import org.tapeline.sizing.fitting.PassedSize;
import org.tapeline.sizing.problem.Problem;

/** A player with head and advice, for pages and answers. */
public record PlayerView(
    UUID player,
    String number,
    String name,
    String team,
    String field,
    HeadRow head,
    List<AdviceRow> advice,
    PassedSize passed) {

  static PlayerView of(PlayerRow row) {
    return new PlayerView(
        row.player,
        row.number,
        row.name(),
        row.team,
        row.field,
        HeadRow.newest(row.player).orElse(null),
        AdviceRow.of(row.player),
        PassedSize.findById(row.player));
  }

  /** Used where a page must not fail on somebody who was erased meanwhile. */
  static PlayerRow existing(Players players, String reference) {
    return players
        .find(reference)
        .map(id -> (PlayerRow) PlayerRow.findById(id))
        .orElseThrow(
            () -> Problem.notFound("There is no player " + reference + ". Search by name."));
  }
}
