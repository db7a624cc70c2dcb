package org.tapeline.fitting.helmet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * What decides whether a player may have a helmet: known to the service, and held by a phone for
 * when there is no signal.
 *
 * @param state as inventory tells: available, issued, quarantined, held, at-reconditioner, retired
 * @param keptFor the players for whose re-fits it is kept; asked only while it is available
 */
public record HelmetStanding(
    String state, Optional<UUID> holder, List<UUID> keptFor, Optional<LocalDate> certifiedUntil) {

  /**
   * Why this player may not have the helmet, in words that say what to do; empty when nothing
   * stands against it.
   *
   * @param today the day at the field
   */
  public Optional<String> refusalFor(UUID player, LocalDate today) {
    if (certifiedUntil.filter(today::isAfter).isPresent()) {
      return Optional.of(
          "The certification of this helmet ended on "
              + certifiedUntil.get()
              + ". Put it aside for reconditioning and take another one.");
    }
    return switch (state) {
      case "available" ->
          keptFor.isEmpty() || keptFor.contains(player)
              ? Optional.empty()
              : Optional.of("This helmet is kept for another player. Take another one.");
      case "issued" ->
          holder.filter(player::equals).isPresent()
              ? Optional.empty()
              : Optional.of("By the records another player has this helmet. Take another one.");
      case "quarantined" ->
          Optional.of("This helmet is in quarantine. Put it aside and take another one.");
      case "held" -> Optional.of("This helmet is on hold. Put it aside and take another one.");
      case "at-reconditioner" ->
          Optional.of("By the records this helmet is at the reconditioner. Take another one.");
      case "retired" -> Optional.of("This helmet is retired. Put it aside and take another one.");
      default -> Optional.of("This helmet is not in service. Take another one.");
    };
  }
}
