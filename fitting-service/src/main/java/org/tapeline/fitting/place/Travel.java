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

  /** Places that can be reached, nearest first. */
  public static List<String> nearest(String from) {
    return Travel.<Travel>list("fromPlace = ?1 order by minutes, toPlace", from).stream()
        .map(row -> row.toPlace)
        .toList();
  }
}
