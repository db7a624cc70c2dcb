package org.tapeline.fitting.part;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;

/** The newest count of a part at a place; the model is empty for a part that fits any. */
@Entity
@Table(name = "part_count")
@IdClass(PartCount.Key.class)
public class PartCount extends PanacheEntityBase {
  @Id public String place;
  @Id public String item;
  @Id public String model;
  public int counted;
  public Instant at;

  /** All three together. */
  public record Key(String place, String item, String model) implements Serializable {}

  static void keep(String place, String item, String model, int counted, Instant at) {
    PartCount row = findById(new Key(place, item, model));
    if (row == null) {
      row = new PartCount();
      row.place = place;
      row.item = item;
      row.model = model;
    } else if (at.isBefore(row.at)) {
      return;
    }
    row.counted = counted;
    row.at = at;
    row.persistAndFlush();
  }
}
