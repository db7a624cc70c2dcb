package org.tapeline.notify.staff;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.UUID;

/** The amount that a depot was told of a restock request. */
@Entity
@Table(name = "restock_told")
public class RestockTold extends PanacheEntityBase {
  @Id public UUID request;

  /** Pieces. */
  public int quantity;
}
