package org.tapeline.notify.escalation;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** A step that was taken with a notice; each at most once. */
@Entity
@Table(name = "notice_escalation")
@IdClass(EscalationRow.Key.class)
public class EscalationRow extends PanacheEntityBase {

  /** A notice and a step. */
  public record Key(UUID notice, String step) implements Serializable {}

  @Id public UUID notice;
  @Id public String step;
  public Instant at;

  /** The steps of these notices, in the order in which they were taken. */
  public static List<EscalationRow> of(Collection<UUID> notices) {
    return list("notice in ?1 order by at", notices);
  }
}
