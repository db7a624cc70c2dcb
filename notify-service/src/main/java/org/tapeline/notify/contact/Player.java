package org.tapeline.notify.contact;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;

/** The local copy of a player's first name and team, erased when the tombstone comes. */
@Entity
public class Player extends PanacheEntityBase {
  @Id public UUID player;

  @Column(name = "given_name")
  public String givenName;

  public String team;

  /** Where the player is fitted; {@code null} until it was told. */
  public String field;
}
