package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** A player with personal data; deleted on erasure. */
@Entity
@Table(name = "player")
public class PlayerRow extends PanacheEntityBase {
  @Id public UUID player;
  public String number;

  @Column(name = "given_name")
  public String givenName;

  @Column(name = "family_name")
  public String familyName;

  @Column(name = "birth_date")
  public LocalDate birthDate;

  public String sex;
  public String team;
  public String field;

  public String name() {
    return givenName + " " + familyName;
  }

  static List<PlayerRow> of(Collection<UUID> players) {
    return list("player in ?1", players);
  }

  static List<PlayerRow> search(PlayerSearch search, int most) {
    return PlayerRow.<PlayerRow>find(
            search.where() + " order by team, familyName, givenName", search.with())
        .range(0, most - 1)
        .list();
  }

  /** The teams of the players who are found. */
  static List<String> teams(PlayerSearch search) {
    return find("select distinct team from PlayerRow where " + search.where(), search.with())
        .project(String.class)
        .stream()
        .sorted()
        .toList();
  }
}
