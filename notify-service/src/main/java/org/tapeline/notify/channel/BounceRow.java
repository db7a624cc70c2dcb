package org.tapeline.notify.channel;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;

/** A channel's server refused a recipient's address for good, and has taken nothing since. */
@Entity
@Table(name = "bounce")
@IdClass(BounceRow.Key.class)
public class BounceRow extends PanacheEntityBase {

  /** A recipient and a channel. */
  public record Key(String recipient, String channel) implements Serializable {}

  @Id public String recipient;
  @Id public String channel;

  /** A code such as {@code 550 5.1.1}. */
  public String code;

  public Instant at;
}
