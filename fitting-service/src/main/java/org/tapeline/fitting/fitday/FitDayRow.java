package org.tapeline.fitting.fitday;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayAnnounced;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayCancelled;
import org.tapeline.fitting.fitday.FitDayEvent.FitDayMoved;

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

  /** Rises whenever the day is moved or cancelled: calendars keep the highest. */
  public int sequence;

  static void show(FitDayEvent event) {
    switch (event) {
      case FitDayAnnounced day -> announced(day.fitDay(), day.opening());
      case FitDayMoved day -> moved(day.fitDay(), day.opening());
      case FitDayCancelled day -> cancelled(day.fitDay());
    }
  }

  private static void announced(UUID fitDay, Opening opening) {
    FitDayRow row = new FitDayRow();
    row.fitDay = fitDay;
    row.hold(opening);
    row.persistAndFlush();
  }

  private static void moved(UUID fitDay, Opening opening) {
    FitDayRow row = findById(fitDay);
    row.hold(opening);
    row.sequence++;
    row.persistAndFlush();
  }

  private static void cancelled(UUID fitDay) {
    FitDayRow row = findById(fitDay);
    row.cancelled = true;
    row.sequence++;
    row.persistAndFlush();
  }

  private void hold(Opening opening) {
    field = opening.field();
    startsAt = opening.startsAt();
    endsAt = opening.endsAt();
    zone = opening.zone();
    fitters = opening.fitters();
    minutes = opening.minutesPerFit();
  }

  Opening opening() {
    return new Opening(field, startsAt, endsAt, zone, fitters, minutes);
  }

  static List<FitDayRow> coming(Instant now) {
    return list("cancelled = false and endsAt > ?1 order by startsAt, field", now);
  }

  /** Those that were cancelled among them. */
  static List<FitDayRow> endingAfter(Instant now) {
    return list("endsAt > ?1 order by startsAt, field, fitDay", now);
  }
}
