package org.tapeline.fitting.part;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** Pieces that came to a place, or with a minus left it; one row an event. */
@Entity
@Table(name = "part_move")
public class PartMove extends PanacheEntityBase {
  @Id public UUID event;
  public String place;
  public String item;
  public int pieces;
  public Instant at;

  static void keep(UUID event, String place, String item, int pieces, Instant at) {
    if (findById(event) == null) {
      PartMove row = new PartMove();
      row.event = event;
      row.place = place;
      row.item = item;
      row.pieces = pieces;
      row.at = at;
      row.persistAndFlush();
    }
  }
}
