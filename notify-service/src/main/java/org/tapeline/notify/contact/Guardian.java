package org.tapeline.notify.contact;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** The local copy of a guardian, erased when the tombstone comes. */
@Entity
public class Guardian extends PanacheEntityBase {
  @Id public UUID guardian;
  public String name;
  public String email;
  public String phone;
  public String language;

  @ElementCollection
  @CollectionTable(name = "guardianship", joinColumns = @JoinColumn(name = "guardian"))
  @Column(name = "player")
  public Set<UUID> players = new HashSet<>();

  /** The guardians of a player, in a steady order. */
  public static List<Guardian> of(UUID player) {
    return list(
        """
        select g from Guardian g join g.players p join fetch g.players
        where p = ?1 order by g.guardian
        """,
        player);
  }
}
