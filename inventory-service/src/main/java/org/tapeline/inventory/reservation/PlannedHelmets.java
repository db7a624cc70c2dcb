package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reservation.Cases.Open;
import org.tapeline.inventory.reservation.Search.Found;

/** Helmets that a committed plan keeps for a player: nobody else finds them in a search. */
@ApplicationScoped
public class PlannedHelmets {
  private static final String OF_PLAYER =
      """
      select h.tag, h.place from helmet h
       where h.planned_for = ? and h.state = 'available' and h.reserved_for is null
         and (h.certified_until is null or h.certified_until >= ?) and h.tag <> ?
         for update of h
      """;

  private static final String BY_PLAN =
      "Kept for this player by a plan that looked at many players and helmets together.";

  private final Database database;

  PlannedHelmets(Database database) {
    this.database = database;
  }

  /** What is planned for the player of the case becomes what is reserved for the case. */
  Optional<Found> take(Open open, LocalDate today, String not) {
    Optional<Found> found =
        open.need().ofHelmet()
            ? database.first(
                OF_PLAYER,
                row -> planned(row.getString(1), row.getString(2)),
                open.player(),
                today,
                not)
            : Optional.empty();
    found.flatMap(Found::tag).ifPresent(tag -> reserve(tag, open.refitCase()));
    return found;
  }

  private static Found planned(String tag, String place) {
    return new Found(Optional.of(tag), Optional.empty(), place, BY_PLAN);
  }

  private void reserve(String tag, UUID refitCase) {
    forget(tag);
    database.change("update helmet set reserved_for = ? where tag = ?", refitCase, tag);
  }

  /** The helmet is gone, or the player has it: it is planned for nobody any more. */
  void forget(String tag) {
    if (database.change("delete from planned_helmet where tag = ?", tag) > 0) {
      database.change("update helmet set planned_for = null where tag = ?", tag);
    }
  }

  /**
   * The player has another helmet: what was planned is free for others.
   *
   * @return what the helmet is that is free now
   */
  Optional<Need> forgetOf(UUID player) {
    Optional<String> tag =
        database.first(
            "select tag from planned_helmet where player = ?", row -> row.getString(1), player);
    tag.ifPresent(this::forget);
    return tag.map(this::kindOf);
  }

  /** What the helmet is, which may be of another model or size than the case asked for. */
  Need kindOf(String tag) {
    return database
        .first(
            "select model, size from helmet where tag = ?",
            row ->
                new Need(
                    "helmet",
                    Optional.of(row.getString(1)),
                    Optional.of(row.getString(2)),
                    Optional.empty()),
            tag)
        .orElseThrow();
  }
}
