package org.tapeline.fitting.place;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.List;

/** Minutes from one place to another. */
@Entity
@Table(name = "travel")
@IdClass(Travel.Key.class)
public class Travel extends PanacheEntityBase {
  @Id
  @Column(name = "from_place")
  public String fromPlace;

  @Id
  @Column(name = "to_place")
  public String toPlace;

  public int minutes;

  /** Both together. */
  public record Key(String fromPlace, String toPlace) implements Serializable {}

  static void keep(String from, String to, int minutes) {
    Travel row = findById(new Key(from, to));
    if (row == null) {
      row = new Travel();
      row.fromPlace = from;
      row.toPlace = to;
    }
    row.minutes = minutes;
    row.persistAndFlush();
  }

  static List<Travel> of(String from) {
    return list("fromPlace = ?1 order by minutes, toPlace", from);
  }

  /** Places that can be reached, nearest first. */
  public static List<String> nearest(String from) {
    return of(from).stream().map(row -> row.toPlace).toList();
  }
}
