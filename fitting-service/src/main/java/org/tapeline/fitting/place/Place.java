package org.tapeline.fitting.place;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/** A field or depot, as inventory lists it. */
@Entity
@Table(name = "place")
public class Place extends PanacheEntityBase {
  @Id public String code;
  public String name;
  public String kind;

  @Column(name = "altitude_m")
  public double altitudeM;

  public String zone;

  /** The clock of a place; where the place is not known, UTC. */
  public static ZoneId zoneOf(String code) {
    Place place = code == null ? null : Place.findById(code);
    return place == null ? ZoneOffset.UTC : ZoneId.of(place.zone);
  }

  public static List<Place> fields() {
    return list("kind = 'field' order by name");
  }
}
