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

  static void announced(FitDayEvent.FitDayAnnounced day) {
    FitDayRow row = new FitDayRow();
    row.fitDay = day.fitDay();
    row.field = day.field();
    row.startsAt = day.startsAt();
    row.endsAt = day.endsAt();
    row.zone = day.zone();
    row.fitters = day.fitters();
    row.minutes = day.minutesPerFit();
    row.persistAndFlush();
  }

  static void cancelled(UUID fitDay) {
    FitDayRow row = findById(fitDay);
    row.cancelled = true;
    row.persistAndFlush();
  }

  static List<FitDayRow> coming(Instant now) {
    return list("cancelled = false and endsAt > ?1 order by startsAt, field", now);
  }
}
