package org.tapeline.fitting.overview;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDayView;
import org.tapeline.fitting.refit.OpenRefits;
import org.tapeline.fitting.refit.RefitView;
import org.tapeline.fitting.roster.PlayerCopy;

/** Who comes to a fit day, and why. */
@ApplicationScoped
class BookedPlayers {
  private final OpenRefits refits;

  BookedPlayers(OpenRefits refits) {
    this.refits = refits;
  }

  /** Who comes when. */
  public record Booked(String from, UUID player, String name, String why) {}

  List<Booked> on(FitDayView day) {
    return day.booked().stream()
        .flatMap(slot -> refits.byId(slot.refitCase()).map(c -> booked(slot, c)).stream())
        .toList();
  }

  private static Booked booked(FitDayView.Slot slot, RefitView refit) {
    PlayerCopy player = PlayerCopy.findById(refit.player());
    return new Booked(
        slot.fromSaid(),
        refit.player(),
        player == null ? "erased" : player.name(),
        refit.whySaid() + "; needs " + refit.needsSaid());
  }
}
