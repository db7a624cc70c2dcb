package org.tapeline.inventory.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetAccess;

/** Which helmet a player has: by id, since nobody's name is known here. */
@ApplicationScoped
public class PlayerHelmets {
  private final Database database;
  private final HelmetAccess access;

  PlayerHelmets(Database database, HelmetAccess access) {
    this.database = database;
    this.access = access;
  }

  /** A helmet in a player's hands. */
  public record Has(UUID player, String tag, String model, String size, String place) {}

  /** The helmets of these players, as far as the caller works at their fields. */
  public List<Has> of(List<UUID> players) {
    String own = access.bounds().map(fields -> String.join(",", fields)).orElse(null);
    return database.list(
        "select h.holder, h.tag, h.model, h.size, h.place from helmet h"
            + " where h.holder = any (string_to_array(?, ',')::uuid[])"
            + " and (?::text is null or h.place = any (string_to_array(?, ',')) or h.holder in"
            + " (select player from player_field where field = any (string_to_array(?, ','))))"
            + " order by h.tag",
        row ->
            new Has(
                row.getObject(1, UUID.class),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getString(5)),
        String.join(",", players.stream().map(UUID::toString).toList()),
        own,
        own,
        own);
  }
}
