package org.tapeline.notify.place;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;

/** The local copy of a field or depot. */
@Entity
public class Place extends PanacheEntityBase {
  /** Its code, such as {@code NORTH}. */
  @Id public String place;

  public String name;
  public String zone;
}
