package org.tapeline.fitting.session;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Sessions by player, so that one can be found again. */
@Entity
@Table(name = "fit_session")
public class FitSessionRow extends PanacheEntityBase {
  @Id public UUID session;
  public UUID player;
  public String field;
  public String fitter;
  public String status;
  public Instant at;

  @Column(name = "ended_at")
  public Instant endedAt;

  /** Since when it is put aside. */
  @Column(name = "paused_at")
  public Instant pausedAt;

  /** How long it was put aside in all. */
  @Column(name = "paused_seconds")
  public long pausedSeconds;

  static void show(FitSession now, Instant at) {
    FitSessionRow row = findById(now.session());
    if (row == null) {
      row = new FitSessionRow();
      row.session = now.session();
      row.player = now.player();
      row.field = now.field();
      row.at = at;
    }
    row.fitter = now.fitter();
    row.status = now.status().name();
    row.endedAt = now.unfinished() ? null : at;
    row.pause(now.status() == FitSession.Status.PAUSED, at);
    row.persistAndFlush();
  }

  private void pause(boolean aside, Instant at) {
    if (aside && pausedAt == null) {
      pausedAt = at;
    } else if (!aside && pausedAt != null) {
      pausedSeconds += Math.max(0, Duration.between(pausedAt, at).toSeconds());
      pausedAt = null;
    }
  }

  /** The newest session of the player that is not over. */
  public static Optional<FitSessionRow> openOf(UUID player) {
    return find("player = ?1 and status in ('OPEN', 'PAUSED') order by at desc", player)
        .firstResultOptional();
  }

  /** All sessions of these players that are not over. */
  public static List<FitSessionRow> openOf(Collection<UUID> players) {
    return players.isEmpty()
        ? List.of()
        : list("player in ?1 and endedAt is null order by at", players);
  }

  /** When a session of the player last ended with a fit or without one. */
  static Optional<Instant> lastEnded(UUID player) {
    return FitSessionRow.<FitSessionRow>find(
            "player = ?1 and status in ('PASSED', 'FAILED') order by endedAt desc", player)
        .firstResultOptional()
        .map(row -> row.endedAt);
  }
}
