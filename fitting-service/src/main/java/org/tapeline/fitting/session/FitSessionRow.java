package org.tapeline.fitting.session;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
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

  static void show(FitSession now, Instant at) {
    FitSessionRow row = findById(now.session());
    if (row == null) {
      row = new FitSessionRow();
      row.session = now.session();
      row.player = now.player();
      row.field = now.field();
      row.fitter = now.fitter();
      row.at = at;
    }
    row.status = now.status().name();
    row.endedAt = now.open() ? null : at;
    row.persistAndFlush();
  }

  /** The newest session of the player that is open. */
  public static Optional<FitSessionRow> openOf(UUID player) {
    return find("player = ?1 and status = 'OPEN' order by at desc", player).firstResultOptional();
  }

  /** When a session of the player last ended without a fit. */
  static Optional<Instant> lastFailed(UUID player) {
    return FitSessionRow.<FitSessionRow>find(
            "player = ?1 and status = 'FAILED' order by endedAt desc", player)
        .firstResultOptional()
        .map(row -> row.endedAt);
  }
}
