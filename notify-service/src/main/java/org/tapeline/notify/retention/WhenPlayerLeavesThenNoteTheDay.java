package org.tapeline.notify.retention;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** Notes since when a player is gone, so that the copies of details do not stay for ever. */
@ApplicationScoped
public class WhenPlayerLeavesThenNoteTheDay {
  private final EntityManager db;

  WhenPlayerLeavesThenNoteTheDay(EntityManager db) {
    this.db = db;
  }

  /** What is read of sizing's {@code player-left} and {@code player-enrolled}. */
  public record OnRoster(UUID player) {}

  public Subscription declareOn(Subscription subscription) {
    return subscription
        .on("org.tapeline.sizing.player-left.v1", OnRoster.class, this::left)
        .on("org.tapeline.sizing.player-enrolled.v1", OnRoster.class, this::cameBack);
  }

  private void left(OnRoster player, ReceivedEvent event) {
    note(player.player(), event.time());
  }

  private void note(UUID player, Instant at) {
    db.createNativeQuery(
            """
            insert into player_left (player, left_at) values (?1, ?2)
            on conflict (player) do update set left_at = excluded.left_at
            """)
        .setParameter(1, player)
        .setParameter(2, at)
        .executeUpdate();
  }

  private void cameBack(OnRoster player, ReceivedEvent event) {
    db.createNativeQuery("delete from player_left where player = ?1")
        .setParameter(1, player.player())
        .executeUpdate();
  }
}
