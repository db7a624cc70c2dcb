package org.tapeline.notify.escalation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/**
 * Whom staff are to reach, kept until it is told together: a hold of thousands makes a few mails,
 * not one for each child. Always in the caller's transaction.
 */
@ApplicationScoped
public class StaffMatters {
  private final EntityManager db;
  private final EscalationPolicy policy;

  StaffMatters(EntityManager db, EscalationPolicy policy) {
    this.db = db;
    this.policy = policy;
  }

  void add(String recipient, UUID notice, Instant at) {
    db.createNativeQuery("insert into staff_pace (recipient) values (?1) on conflict do nothing")
        .setParameter(1, recipient)
        .executeUpdate();
    db.createNativeQuery(
            """
            insert into staff_matter (recipient, notice, at) values (?1, ?2, ?3)
            on conflict do nothing
            """)
        .setParameter(1, recipient)
        .setParameter(2, notice)
        .setParameter(3, at)
        .executeUpdate();
  }

  /** Staff whose matters have waited for others long enough, and who were not told just now. */
  public List<String> due(Instant now) {
    List<?> due =
        db.createNativeQuery(
                """
                select p.recipient from staff_pace p
                where (p.told_at is null or p.told_at <= ?1) and exists (
                  select 1 from staff_matter m
                  where m.recipient = p.recipient and m.told_in is null and m.at <= ?2)
                order by p.recipient
                """,
                String.class)
            .setParameter(1, now.minus(policy.together().atMostEvery()))
            .setParameter(2, now.minus(policy.together().waitFor()))
            .getResultList();
    return due.stream().map(String.class::cast).toList();
  }

  /**
   * Takes all that waits for one recipient, unless another process did so meanwhile.
   *
   * @param tell gets the notices, oldest first, and gives the id of the notice that tells of them;
   *     empty when somebody answered all of them meanwhile
   */
  public void take(String recipient, Instant now, Function<List<UUID>, Optional<UUID>> tell) {
    lock(recipient);
    if (!due(now).contains(recipient)) {
      return;
    }
    Optional<UUID> told = tell.apply(waiting(recipient));
    if (told.isEmpty()) {
      db.createNativeQuery("delete from staff_matter where recipient = ?1 and told_in is null")
          .setParameter(1, recipient)
          .executeUpdate();
      return;
    }
    db.createNativeQuery(
            "update staff_matter set told_in = ?1 where recipient = ?2 and told_in is null")
        .setParameter(1, told.get())
        .setParameter(2, recipient)
        .executeUpdate();
    db.createNativeQuery("update staff_pace set told_at = ?1 where recipient = ?2")
        .setParameter(1, now)
        .setParameter(2, recipient)
        .executeUpdate();
  }

  private void lock(String recipient) {
    db.createNativeQuery("select recipient from staff_pace where recipient = ?1 for update")
        .setParameter(1, recipient)
        .getResultList();
  }

  private List<UUID> waiting(String recipient) {
    List<?> waiting =
        db.createNativeQuery(
                """
                select notice from staff_matter where recipient = ?1 and told_in is null
                order by at, notice
                """,
                UUID.class)
            .setParameter(1, recipient)
            .getResultList();
    return waiting.stream().map(UUID.class::cast).toList();
  }
}
