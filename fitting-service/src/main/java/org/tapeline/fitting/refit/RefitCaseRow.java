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

/** A re-fit case as it stands. */
@Entity
@Table(name = "refit_case")
public class RefitCaseRow extends PanacheEntityBase {
  static final String OPEN = "open";
  static final String CLOSED = "closed";

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

  static void opened(RefitCommand.Open open) {
    RefitCaseRow row = new RefitCaseRow();
    row.refitCase = open.refitCase();
    row.player = open.player();
    row.field = open.field();
    row.team = open.team();
    row.urgency = "do-not-wear";
    row.why = open.why();
    row.tag = open.tag().orElse(null);
    row.status = OPEN;
    row.openedAt = open.at();
    row.persistAndFlush();
  }

  boolean open() {
    return status.equals(OPEN);
  }

  RefitRules.Ask ask() {
    return new RefitRules.Ask(why, Optional.ofNullable(tag), RefitNeedRow.needs(refitCase));
  }

  static Optional<RefitCaseRow> openOf(UUID player) {
    return find("player = ?1 and status = 'open'", player).firstResultOptional();
  }

  /** Oldest first. */
  static List<RefitCaseRow> allOpen() {
    return list("status = 'open' order by openedAt, refitCase");
  }
}
