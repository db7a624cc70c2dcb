package org.tapeline.notify.contact;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.util.UUID;

/**
 * The local copy of a player's first name, number, team and field, erased when the tombstone comes.
 */
@Entity
public class Player extends PanacheEntityBase {
  @Id public UUID player;

  @Column(name = "given_name")
  public String givenName;

  public String team;

  /** As the association counts its players, such as {@code LV-0001}. */
  public String number;

  /** Where the player is fitted; {@code null} until it was told. */
  public String field;
}
