package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
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

  static List<PlayerRow> search(String field, String team, String words) {
    return list(
        "(?1 = '' or field = ?1) and (?2 = '' or team = ?2) and (?3 = ''"
            + " or lower(givenName || ' ' || familyName || ' ' || number) like ?4)"
            + " order by team, familyName, givenName",
        field,
        team,
        words,
        "%" + words.toLowerCase() + "%");
  }
}
