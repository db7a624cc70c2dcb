package org.tapeline.fitting.place;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

  /** Minutes to each place that is listed from one of these. */
  public static Map<String, Map<String, Integer>> minutesFrom(Collection<String> places) {
    Map<String, Map<String, Integer>> minutes = new HashMap<>();
    for (Travel way : Travel.<Travel>list("fromPlace in ?1", places)) {
      minutes.computeIfAbsent(way.fromPlace, from -> new HashMap<>()).put(way.toPlace, way.minutes);
    }
    return minutes;
  }
}
