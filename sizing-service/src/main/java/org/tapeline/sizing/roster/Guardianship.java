package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.List;
import java.util.UUID;

/** Who stands for whom. */
@Entity
@Table(name = "guardianship")
@IdClass(Guardianship.Key.class)
public class Guardianship extends PanacheEntityBase {
  @Id public UUID player;
  @Id public UUID guardian;

  @Column(name = "place")
  public int place;

  /** Both together. */
  public record Key(UUID player, UUID guardian) implements Serializable {}

  static void replace(UUID player, List<UUID> guardians) {
    Guardianship.<Guardianship>list("player", player).forEach(Guardianship::delete);
    getEntityManager().flush();
    for (int place = 0; place < guardians.size(); place++) {
      Guardianship link = new Guardianship();
      link.player = player;
      link.guardian = guardians.get(place);
      link.place = place;
      link.persist();
    }
  }

  static List<UUID> guardiansOf(UUID player) {
    return Guardianship.<Guardianship>list("player = ?1 order by place", player).stream()
        .map(g -> g.guardian)
        .toList();
  }

  static List<UUID> playersOf(UUID guardian) {
    return Guardianship.<Guardianship>list("guardian = ?1 order by player", guardian).stream()
        .map(g -> g.player)
        .toList();
  }
}
