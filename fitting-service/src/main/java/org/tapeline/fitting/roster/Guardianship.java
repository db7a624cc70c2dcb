package org.tapeline.fitting.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Who brings whom to a fit day. Ids only: names and addresses are none of this service's. */
@Entity
@Table(name = "guardianship")
@IdClass(Guardianship.Key.class)
public class Guardianship extends PanacheEntityBase {
  @Id public UUID guardian;
  @Id public UUID player;

  /** Both together. */
  public record Key(UUID guardian, UUID player) implements Serializable {}

  static void keep(UUID guardian, Collection<UUID> players) {
    Set<UUID> wanted = new HashSet<>(players);
    for (Guardianship row : Guardianship.<Guardianship>list("guardian", guardian)) {
      if (!wanted.remove(row.player)) {
        row.delete();
      }
    }
    for (UUID player : wanted) {
      Guardianship row = new Guardianship();
      row.guardian = guardian;
      row.player = player;
      row.persist();
    }
    flush();
  }

  static void eraseGuardian(String guardian) {
    keep(UUID.fromString(guardian), Set.of());
  }

  static void erasePlayer(UUID player) {
    Guardianship.<Guardianship>list("player", player).forEach(Guardianship::delete);
    flush();
  }

  /** The guardians of each player who has any. */
  public static Map<UUID, Set<UUID>> guardiansOf(Collection<UUID> players) {
    Map<UUID, Set<UUID>> guardians = new HashMap<>();
    if (!players.isEmpty()) {
      Guardianship.<Guardianship>list("player in ?1", players)
          .forEach(
              row -> guardians.computeIfAbsent(row.player, p -> new HashSet<>()).add(row.guardian));
    }
    return guardians;
  }

  /** Everybody whom one of these guardians brings. */
  public static List<UUID> playersOf(Collection<UUID> guardians) {
    return guardians.isEmpty()
        ? List.of()
        : Guardianship.<Guardianship>list("guardian in ?1", guardians).stream()
            .map(row -> row.player)
            .distinct()
            .toList();
  }
}
