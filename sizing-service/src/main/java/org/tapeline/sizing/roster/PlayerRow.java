package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

  /**
   * Roster numbers of those whose newest head is older than that: never measured first, then the
   * oldest measurement.
   */
  static List<String> waiting(PlayerSearch search, Instant since) {
    Map<String, Object> with = new HashMap<>(search.with());
    with.put("since", since);
    return find(
            "select p.number from PlayerRow p left join HeadRow h on h.player = p.player and"
                + " h.version = (select max(o.version) from HeadRow o where o.player = p.player)"
                + " where (h.measuredAt is null or h.measuredAt < :since) and "
                + search.where()
                + " order by h.measuredAt nulls first, p.team, p.familyName, p.givenName, p.number",
            with)
        .project(String.class)
        .list();
  }

  /** The teams of the players who are found. */
  static List<String> teams(PlayerSearch search) {
    return find("select distinct team from PlayerRow where " + search.where(), search.with())
        .project(String.class)
        .list()
        .stream()
        .sorted()
        .toList();
  }
}
