package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;

/** The player behind a roster number; kept when the person is erased. */
@Entity
@Table(name = "roster_number")
public class RosterNumber extends PanacheEntityBase {
  @Id public String number;
  public UUID player;

  /** By id or roster number. */
  static Optional<RosterNumber> of(String reference) {
    try {
      return find("player", UUID.fromString(reference)).firstResultOptional();
    } catch (IllegalArgumentException e) {
      return findByIdOptional(reference);
    }
  }
}
