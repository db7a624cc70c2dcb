package org.tapeline.notify.cause;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A re-check that became due since the sign-off. */
@Entity
@Table(name = "recheck")
public class RecheckRow extends PanacheEntityBase {
  @Id public UUID event;
  public UUID player;

  @Column(name = "due_at")
  public Instant dueAt;

  @Column(name = "lapses_at")
  public Instant lapsesAt;

  @Column(name = "correlation_id")
  public UUID correlationId;

  static List<RecheckRow> of(UUID player) {
    return list("player = ?1 order by dueAt, event", player);
  }

  Fit.Due due() {
    return new Fit.Due(event, dueAt, Optional.ofNullable(lapsesAt));
  }
}
