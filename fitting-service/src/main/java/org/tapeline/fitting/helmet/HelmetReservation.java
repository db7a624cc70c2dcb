package org.tapeline.fitting.helmet;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * A helmet kept for a player's re-fit. One row a case: the release by one case and the reservation
 * by the next come on different streams, in any order.
 */
@Entity
@Table(name = "helmet_reservation")
@IdClass(HelmetReservation.Key.class)
public class HelmetReservation extends PanacheEntityBase {
  @Id
  @Column(name = "refit_case")
  public UUID refitCase;

  @Id public String tag;
  public UUID player;

  /** Both together. */
  public record Key(UUID refitCase, String tag) implements Serializable {}

  public static void keep(UUID refitCase, String tag, UUID player) {
    if (findById(new Key(refitCase, tag)) == null) {
      HelmetReservation row = new HelmetReservation();
      row.refitCase = refitCase;
      row.tag = tag;
      row.player = player;
      row.persist();
    }
  }

  public static void release(UUID refitCase, String tag) {
    deleteById(new Key(refitCase, tag));
  }

  /** By tag, for those that are kept. */
  public static Map<String, List<UUID>> playersOf(Collection<String> tags) {
    return tags.isEmpty()
        ? Map.of()
        : HelmetReservation.<HelmetReservation>list("tag in ?1", tags).stream()
            .collect(groupingBy(row -> row.tag, mapping(row -> row.player, toList())));
  }

  static List<UUID> playersOf(String tag) {
    return HelmetReservation.<HelmetReservation>list("tag", tag).stream()
        .map(row -> row.player)
        .toList();
  }
}
