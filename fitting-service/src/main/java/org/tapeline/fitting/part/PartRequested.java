package org.tapeline.fitting.part;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;

/** What a restock request is for. */
@Entity
@Table(name = "part_requested")
public class PartRequested extends PanacheEntityBase {
  @Id public UUID request;
  public String item;

  static void keep(UUID request, String item) {
    if (findById(request) == null && !item.startsWith("helmet:")) {
      PartRequested row = new PartRequested();
      row.request = request;
      row.item = item;
      row.persistAndFlush();
    }
  }

  static Optional<String> item(UUID request) {
    return PartRequested.<PartRequested>findByIdOptional(request).map(row -> row.item);
  }
}
