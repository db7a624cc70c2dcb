package org.tapeline.inventory.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.advice.AdvisedSizes;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Subscription;

/** Where each player is fitted, copied from sizing; never who the player is. */
@ApplicationScoped
public class PlayerFields {
  private final Database database;
  private final AdvisedSizes advised;

  PlayerFields(Database database, AdvisedSizes advised) {
    this.database = database;
    this.advised = advised;
  }

  /** What is read of {@code player-enrolled} and {@code player-moved}. */
  record AtField(UUID player, String field) {}

  /** What is read of {@code player-left}. */
  record Left(UUID player) {}

  public Subscription declareOn(Subscription subscription) {
    String of = "org.tapeline.sizing.";
    return subscription
        .events("sizing.events")
        .on(of + "player-enrolled.v1", AtField.class, (d, e) -> keep(d))
        .on(of + "player-moved.v1", AtField.class, (d, e) -> keep(d))
        .on(of + "player-left.v1", Left.class, (d, e) -> forget(d.player()))
        .ignoring(
            of + "head-measured.v1",
            of + "head-corrected.v1",
            of + "chart-published.v1",
            of + "remeasure-due.v1");
  }

  private void keep(AtField d) {
    database.change(
        "insert into player_field (player, field) values (?, ?)"
            + " on conflict (player) do update set field = excluded.field",
        d.player(),
        d.field());
  }

  private void forget(UUID player) {
    database.change("delete from player_field where player = ?", player);
    advised.forget(player);
  }

  public Optional<String> fieldOf(UUID player) {
    return database.first(
        "select field from player_field where player = ?", row -> row.getString(1), player);
  }
}
