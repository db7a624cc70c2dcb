package org.tapeline.fitting.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The local copy of a player; the name goes when the player is erased. */
@Entity
@Table(name = "player")
public class PlayerCopy extends PanacheEntityBase {
  @Id public UUID player;
  public String number;

  @Column(name = "given_name")
  public String givenName;

  @Column(name = "family_name")
  public String familyName;

  public String team;
  public String field;

  @Column(name = "on_roster")
  public boolean onRoster = true;

  public String name() {
    return givenName == null ? "erased" : givenName + " " + familyName;
  }

  /** The row, made when nobody spoke of the player before. */
  static PlayerCopy of(UUID player) {
    PlayerCopy row = findById(player);
    if (row == null) {
      row = new PlayerCopy();
      row.player = player;
    }
    return row;
  }

  public static List<PlayerCopy> onRoster() {
    return list("onRoster = true and team is not null order by team, familyName, givenName");
  }

  public static List<PlayerCopy> ofTeam(String team) {
    return list("onRoster = true and team = ?1 order by familyName, givenName", team);
  }

  /** By id or roster number. */
  public static Optional<PlayerCopy> find(String reference) {
    try {
      return findByIdOptional(UUID.fromString(reference));
    } catch (IllegalArgumentException e) {
      return find("number", reference).firstResultOptional();
    }
  }
}
