package org.tapeline.notify.retention;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.notify.channel.Bounces;
import org.tapeline.notify.contact.Contacts;

/**
 * Deletes the copies of players who left long ago, and of guardians who have no other player here.
 * Whoever still has an open case or a notice to be sent is left alone. What a guardian turned off
 * stays, so that it holds should the family come back.
 */
@ApplicationScoped
class GoneFamilies {
  private final Contacts contacts;
  private final Bounces bounces;
  private final EntityManager db;

  GoneFamilies(Contacts contacts, Bounces bounces, EntityManager db) {
    this.contacts = contacts;
    this.bounces = bounces;
    this.db = db;
  }

  /**
   * Some of them.
   *
   * @return how many people's copies were deleted
   */
  @Transactional
  int delete(Instant before, int limit) {
    List<?> players =
        db.createNativeQuery(
                """
                select l.player from player_left l
                where l.left_at < ?1
                  and not exists (select from refit_case c
                    where c.player = l.player and c.outcome is null)
                  and not exists (select from notice_player p join notice n using (notice)
                    where p.player = l.player and n.state = 'raised')
                order by l.left_at limit ?2 for update skip locked
                """,
                UUID.class)
            .setParameter(1, before)
            .setParameter(2, limit)
            .getResultList();
    int people = 0;
    for (Object player : players) {
      people += deleteFamily((UUID) player);
    }
    return people;
  }

  private int deleteFamily(UUID player) {
    List<?> guardians =
        db.createNativeQuery(
                """
                select g.guardian from guardianship g where g.player = ?1
                  and not exists (select from guardianship other
                    where other.guardian = g.guardian and other.player <> ?1)
                """,
                UUID.class)
            .setParameter(1, player)
            .getResultList();
    contacts.erasePlayer(player);
    for (Object guardian : guardians) {
      contacts.eraseGuardian((UUID) guardian);
      bounces.forget(guardian.toString());
    }
    db.createNativeQuery("delete from player_left where player = ?1")
        .setParameter(1, player)
        .executeUpdate();
    return 1 + guardians.size();
  }
}
