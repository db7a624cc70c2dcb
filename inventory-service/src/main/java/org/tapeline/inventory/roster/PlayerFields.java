package org.tapeline.inventory.roster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.advice.AdvisedSizes;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Subscription;

/** Where each player is fitted and the roster number, copied from sizing; never a name. */
@ApplicationScoped
@Named("roster")
public class PlayerFields {
  private final Database database;
  private final AdvisedSizes advised;

  PlayerFields(Database database, AdvisedSizes advised) {
    this.database = database;
    this.advised = advised;
  }

  /** What is read of {@code player-enrolled}. */
  record Enrolled(UUID player, String number, String field) {}

  /** What is read of {@code player-moved}. */
  record AtField(UUID player, String field) {}

  /** What is read of {@code player-left}. */
  record Left(UUID player) {}

  public Subscription declareOn(Subscription subscription) {
    String of = "org.tapeline.sizing.";
    return subscription
        .events("sizing.events")
        .on(of + "player-enrolled.v1", Enrolled.class, (d, e) -> keep(d))
        .on(of + "player-moved.v1", AtField.class, (d, e) -> keep(d))
        .on(of + "player-left.v1", Left.class, (d, e) -> forget(d.player()))
        .ignoring(
            of + "head-measured.v1",
            of + "head-corrected.v1",
            of + "chart-published.v1",
            of + "remeasure-due.v1");
  }

  private void keep(Enrolled d) {
    keep(new AtField(d.player(), d.field()));
    database.change("update player_field set number = ? where player = ?", d.number(), d.player());
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

  /** The roster number; the end of the id where no number is known. */
  public String say(UUID player) {
    return database
        .first(
            "select number from player_field where player = ? and number is not null",
            row -> row.getString(1),
            player)
        .orElseGet(() -> "player " + player.toString().substring(28));
  }
}
