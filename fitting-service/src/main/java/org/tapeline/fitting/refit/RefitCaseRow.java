package org.tapeline.fitting.refit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A re-fit case. */
@Entity
@Table(name = "refit_case")
public class RefitCaseRow extends PanacheEntityBase {
  @Id
  @Column(name = "refit_case")
  public UUID refitCase;

  public UUID player;
  public String field;
  public String team;
  public String urgency;
  public String why;
  public String tag;
  public String status;

  @Column(name = "opened_at")
  public Instant openedAt;

  public static Optional<RefitCaseRow> openOf(UUID player) {
    return find("player = ?1 and status = 'open'", player).firstResultOptional();
  }

  public static List<RefitCaseRow> open() {
    return list("status = 'open' order by openedAt");
  }
}
