package org.tapeline.notify.text;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** One text message of a notice, as the gateway knows it. */
@Entity
@Table(name = "text_message")
@IdClass(TextMessageRow.Key.class)
public class TextMessageRow extends PanacheEntityBase {

  /** A notice and which of its messages, from 1. */
  public record Key(UUID notice, int group) implements Serializable {}

  @Id public UUID notice;

  @Id
  @Column(name = "message_group")
  public int group;

  @Column(name = "gateway_id")
  public String gatewayId;

  /** begun, accepted, delivered or failed. */
  public String state;

  @Column(name = "changed_at")
  public Instant changedAt;

  static Optional<TextMessageRow> newest(UUID notice) {
    return find("notice = ?1 order by group desc", notice).firstResultOptional();
  }

  static Optional<TextMessageRow> locked(UUID notice, int group) {
    return findByIdOptional(new Key(notice, group), LockModeType.PESSIMISTIC_WRITE);
  }

  static Optional<TextMessageRow> lockedBy(String gatewayId) {
    return find("gatewayId", gatewayId)
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional();
  }
}
