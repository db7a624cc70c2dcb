package org.tapeline.notify.staff;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/** The amount that a depot was told of a restock request. */
@Entity
@Table(name = "restock_told")
public class RestockTold extends PanacheEntityBase {
  @Id public UUID request;

  /** Pieces. */
  public int quantity;

  /** Pieces by request; nothing for those that were not told of. */
  static Map<UUID, Integer> quantities(List<UUID> requests) {
    return RestockTold.<RestockTold>list("request in ?1", requests).stream()
        .collect(Collectors.toMap(told -> told.request, told -> told.quantity));
  }
}
