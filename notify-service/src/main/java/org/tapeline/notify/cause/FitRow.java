package org.tapeline.notify.cause;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;

/** The newest word on a player's sign-off, and until when news of it waits. */
@Entity
@Table(name = "fit")
public class FitRow extends PanacheEntityBase {
  @Id public UUID player;

  /** Of the sign-off's stream. */
  public long version;

  public String state;
  public UUID event;
  public Instant at;
  public String why;

  @Column(name = "correlation_id")
  public UUID correlationId;

  @Column(name = "wait_until")
  public Instant waitUntil;

  /** Locked until the transaction ends, so that two events of a player are looked at in turn. */
  static FitRow lockedOrNew(UUID player) {
    return (FitRow)
        getEntityManager()
            .createNativeQuery(
                """
                insert into fit (player) values (?1)
                on conflict (player) do update set player = excluded.player returning *
                """,
                FitRow.class)
            .setParameter(1, player)
            .getSingleResult();
  }

  /** Fits of players, locked in one order. */
  static List<FitRow> lockedOf(Collection<UUID> players) {
    List<?> rows =
        getEntityManager()
            .createNativeQuery(
                """
                select * from fit where player = any (cast(?1 as uuid[])) order by player for update
                """,
                FitRow.class)
            .setParameter(1, players.stream().map(UUID::toString).toArray(String[]::new))
            .getResultList();
    return rows.stream().map(FitRow.class::cast).toList();
  }

  /** Fits of players, not locked. */
  static List<FitRow> ofAll(Collection<UUID> players) {
    return list("player in ?1 order by player", players);
  }

  /** Those whose wait is over, longest first; locked, and those that others look at left out. */
  static List<FitRow> waitedUntil(Instant now, int limit) {
    List<?> due =
        getEntityManager()
            .createNativeQuery(
                """
                select player from fit where wait_until <= ?1
                order by wait_until limit ?2 for update skip locked
                """,
                UUID.class)
            .setParameter(1, now)
            .setParameter(2, limit)
            .getResultList();
    return due.stream().map(id -> (FitRow) findById(id)).toList();
  }

  /** Something else changed what is to be said of the player's fit, if there is anything to say. */
  static void lookSoon(UUID player, Instant now) {
    getEntityManager()
        .createNativeQuery(
            """
            update fit set wait_until = ?1 where player = ?2 and (state = 'lapsed'
            or exists (select 1 from recheck r where r.player = ?2))
            """)
        .setParameter(1, now)
        .setParameter(2, player)
        .executeUpdate();
  }

  /** An older word that comes after a newer one changes nothing. */
  boolean says(Fit.State newState, String newWhy, Instant newAt, ReceivedEvent received) {
    if (version >= received.version()) {
      return false;
    }
    version = received.version();
    state = newState.name().toLowerCase(Locale.ROOT).replace('_', '-');
    event = received.id();
    at = newAt;
    why = newWhy;
    correlationId = received.correlationId();
    return true;
  }

  /** The earlier end of waiting counts. */
  void waits(Instant until) {
    waitUntil = waitUntil == null || until.isBefore(waitUntil) ? until : waitUntil;
  }

  Optional<Fit.Word> word() {
    return Optional.ofNullable(event)
        .map(
            id ->
                new Fit.Word(
                    id,
                    Fit.State.valueOf(state.toUpperCase(Locale.ROOT).replace('-', '_')),
                    at,
                    why));
  }
}
