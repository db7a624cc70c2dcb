package org.tapeline.notify.help;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A call that a family asked for; follows from its events. */
@Entity
@Table(name = "help_call")
public class HelpCallRow extends PanacheEntityBase {
  @Id public UUID help;
  public long version;
  public UUID notice;
  public String recipient;
  public String field;

  @Column(name = "asked_at")
  public Instant askedAt;

  @Column(name = "answered_at")
  public Instant answeredAt;

  @Column(name = "answered_by")
  public String answeredBy;

  /** True when it is a new one: the database's key decides. */
  static boolean insert(HelpAsked asked) {
    return getEntityManager()
            .createNativeQuery(
                """
                insert into help_call (help, version, notice, recipient, field, asked_at)
                values (?1, 1, ?2, ?3, ?4, ?5) on conflict do nothing
                """)
            .setParameter(1, asked.help())
            .setParameter(2, asked.notice())
            .setParameter(3, asked.recipient().toString())
            .setParameter(4, asked.field().orElse(null))
            .setParameter(5, asked.at())
            .executeUpdate()
        == 1;
  }

  static void answered(HelpAnswered answered) {
    HelpCallRow row = findById(answered.help());
    row.version++;
    row.answeredAt = answered.at();
    row.answeredBy = answered.by();
    row.persist();
  }

  static Optional<HelpCallRow> locked(UUID help) {
    return findByIdOptional(help, LockModeType.PESSIMISTIC_WRITE);
  }

  /** Longest waiting first. */
  static List<HelpCallRow> open() {
    return list("answeredAt is null order by askedAt, help");
  }
}
