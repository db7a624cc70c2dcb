package org.tapeline.fitting.helmet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A helmet at a field that a player may have.
 *
 * @param reserved it is kept for the player's re-fit
 * @param held the player has it by the records
 */
public record HelmetInReach(HelmetCopy helmet, boolean reserved, boolean held) {

  /**
   * By model, size and tag.
   *
   * @param today the day at the field
   */
  public static List<HelmetInReach> of(UUID player, String field, LocalDate today) {
    List<HelmetCopy> at = HelmetCopy.at(field);
    Map<String, List<UUID>> kept =
        HelmetReservation.playersOf(at.stream().map(h -> h.tag).toList());
    return at.stream()
        .filter(h -> h.refusalFor(player, today, kept.getOrDefault(h.tag, List.of())).isEmpty())
        .map(
            h ->
                new HelmetInReach(
                    h,
                    kept.getOrDefault(h.tag, List.of()).contains(player),
                    player.equals(h.holder)))
        .toList();
  }
}
