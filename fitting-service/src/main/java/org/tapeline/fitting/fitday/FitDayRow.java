package org.tapeline.fitting.fitday;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A fit day. */
@Entity
@Table(name = "fit_day")
public class FitDayRow extends PanacheEntityBase {
  @Id
  @Column(name = "fit_day")
  public UUID fitDay;

  public String field;

  @Column(name = "starts_at")
  public Instant startsAt;

  @Column(name = "ends_at")
  public Instant endsAt;

  public String zone;
  public int fitters;
  public int minutes;
  public boolean cancelled;

  static List<FitDayRow> coming(Instant now) {
    return list("cancelled = false and endsAt > ?1 order by startsAt, field", now);
  }
}
