package org.tapeline.sizing.roster;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.sizing.fitting.PassedSize;

/**
 * A player with head and advice, for pages and answers.
 *
 * @param name {@code erased} when the person was erased
 * @param head the newest measurement, or {@code null}
 * @param passed the size that passed a fit check last, or {@code null}
 */
public record PlayerView(
    UUID player,
    String number,
    String name,
    String team,
    String field,
    HeadRow head,
    List<AdviceRow> advice,
    PassedSize passed) {

  static List<PlayerView> of(List<PlayerRow> rows) {
    List<UUID> ids = rows.stream().map(row -> row.player).toList();
    Map<UUID, HeadRow> heads = HeadRow.newestOf(ids);
    Map<UUID, List<AdviceRow>> advice = AdviceRow.of(ids);
    Map<UUID, PassedSize> passed = PassedSize.of(ids);
    return rows.stream()
        .map(
            row ->
                new PlayerView(
                    row.player,
                    row.number,
                    row.name(),
                    row.team,
                    row.field,
                    heads.get(row.player),
                    advice.getOrDefault(row.player, List.of()),
                    passed.get(row.player)))
        .toList();
  }

  /** What is left of somebody who was erased: all but who it was. */
  static PlayerView erased(RosterNumber number, PlayerState state) {
    List<UUID> id = List.of(number.player);
    return new PlayerView(
        number.player,
        number.number,
        "erased",
        state.team(),
        state.field(),
        HeadRow.newestOf(id).get(number.player),
        AdviceRow.of(number.player),
        PassedSize.of(id).get(number.player));
  }
}
