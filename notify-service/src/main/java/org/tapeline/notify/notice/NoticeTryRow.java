package org.tapeline.notify.notice;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** One try to send a notice. Without an outcome it runs, or a crash cut it off. */
@Entity
@Table(name = "notice_try")
@IdClass(NoticeTryRow.Key.class)
public class NoticeTryRow extends PanacheEntityBase {

  /** The code of a try that found nobody to talk to. */
  private static final String NO_CONNECTION = "connect-failed";

  /** A notice and the number of the try, from 1. */
  public record Key(UUID notice, int attempt) implements Serializable {}

  @Id public UUID notice;
  @Id public int attempt;
  public String channel;

  @Column(name = "started_at")
  public Instant startedAt;

  @Column(name = "ended_at")
  public Instant endedAt;

  /** taken, refused or failed. */
  public String outcome;

  /** A code such as {@code 550 5.1.1}; never the server's sentence. */
  public String code;

  /**
   * How a try ended.
   *
   * @param code {@code null} when the channel took it
   */
  public static void end(UUID notice, int attempt, Instant at, String outcome, String code) {
    getEntityManager()
        .createNativeQuery(
            """
            update notice_try set ended_at = ?1, outcome = ?2, code = cast(?3 as text)
            where notice = ?4 and attempt = ?5
            """)
        .setParameter(1, at)
        .setParameter(2, outcome)
        .setParameter(3, code)
        .setParameter(4, notice)
        .setParameter(5, attempt)
        .executeUpdate();
  }

  /** The channels on which a try was made. */
  public static Set<String> channelsOf(UUID notice) {
    return of(notice).stream().map(row -> row.channel).collect(Collectors.toUnmodifiableSet());
  }

  /** The tries of several notices, in the order of time. */
  public static List<NoticeTryRow> of(Collection<UUID> notices) {
    return list("notice in ?1 order by startedAt, attempt", notices);
  }

  /** Whether a try was made that the other side may have taken: one that got as far as to it. */
  static boolean mayHaveArrived(UUID notice) {
    return of(notice).stream().anyMatch(row -> !NO_CONNECTION.equals(row.code));
  }

  static List<NoticeTryRow> of(UUID notice) {
    return list("notice = ?1 order by attempt", notice);
  }
}
