package org.tapeline.sizing.roster;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.units.Millimetres;

/**
 * A player of the roster whose head is known.
 *
 * @param head the newest value
 * @param uncertainty half the width of the 95 % interval around it, without the hair
 */
public record MeasuredPlayer(
    UUID player,
    String number,
    String name,
    String team,
    Millimetres head,
    Millimetres uncertainty,
    Hair hair) {

  /** By team and name. */
  public static List<MeasuredPlayer> all() {
    Map<UUID, HeadRow> heads =
        HeadRow.newestOfAll().stream().collect(Collectors.toMap(head -> head.player, head -> head));
    return PlayerRow.<PlayerRow>list("order by team, familyName, givenName, number").stream()
        .filter(row -> heads.containsKey(row.player))
        .map(row -> of(row, heads.get(row.player)))
        .toList();
  }

  private static MeasuredPlayer of(PlayerRow row, HeadRow head) {
    return new MeasuredPlayer(
        row.player,
        row.number,
        row.name(),
        row.team,
        new Millimetres(head.valueMm),
        new Millimetres(head.uncertaintyMm),
        Hair.of(head.hair).orElseThrow());
  }
}
