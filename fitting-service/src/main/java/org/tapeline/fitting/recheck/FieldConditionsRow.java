package org.tapeline.fitting.recheck;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.tapeline.fitting.recheck.RecheckCauseEvent.ConditionsRecorded;

/** The newest air temperature that was told of a field. */
@Entity
@Table(name = "field_conditions")
public class FieldConditionsRow extends PanacheEntityBase {
  @Id public String field;

  @Column(name = "air_celsius")
  public double airCelsius;

  @Column(name = "measured_at")
  public Instant measuredAt;

  /** An older one that comes late changes nothing. */
  static void show(ConditionsRecorded event) {
    FieldConditionsRow row = findById(event.field());
    if (row == null) {
      row = new FieldConditionsRow();
      row.field = event.field();
    } else if (row.measuredAt.isAfter(event.at())) {
      return;
    }
    row.airCelsius = event.airCelsius();
    row.measuredAt = event.at();
    row.persistAndFlush();
  }
}
