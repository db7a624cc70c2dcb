package org.tapeline.notify.retention;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.util.UUID;
import org.tapeline.notify.channel.Bounces;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.notice.NoticeCovers;
import org.tapeline.notify.notice.NoticeTexts;
import org.tapeline.notify.wish.WishDesk;

/**
 * Takes a person out of everything that is kept here; in the caller's transaction. What stays is
 * ids, counts and events, which say nothing of anybody.
 */
@ApplicationScoped
public class Erasure {
  private final Contacts contacts;
  private final NoticeCovers covers;
  private final NoticeTexts texts;
  private final Bounces bounces;
  private final WishDesk wishes;
  private final EntityManager db;

  Erasure(
      Contacts contacts,
      NoticeCovers covers,
      NoticeTexts texts,
      Bounces bounces,
      WishDesk wishes,
      EntityManager db) {
    this.contacts = contacts;
    this.covers = covers;
    this.texts = texts;
    this.bounces = bounces;
    this.wishes = wishes;
    this.db = db;
  }

  /** The copy, every text about the player to whomever it went, and what waits to be replayed. */
  public void player(UUID player) {
    contacts.erasePlayer(player);
    covers.forget(player);
    texts.erasePlayer(player);
    forgetParked(player.toString());
    db.createNativeQuery("delete from player_left where player = ?1")
        .setParameter(1, player)
        .executeUpdate();
  }

  /**
   * The copy, every text to the guardian, what the text gateway calls the messages to them, what
   * they wished and turned off, bounces, and what waits to be replayed.
   */
  public void guardian(UUID guardian) {
    String recipient = guardian.toString();
    contacts.eraseGuardian(guardian);
    texts.eraseRecipient(recipient);
    bounces.forget(recipient);
    wishes.forget(recipient);
    db.createNativeQuery(
            """
            update text_message set gateway_id = null
            where notice in (select notice from notice where recipient = ?1)
            """)
        .setParameter(1, recipient)
        .executeUpdate();
    db.createNativeQuery("delete from opt_out where recipient = ?1")
        .setParameter(1, recipient)
        .executeUpdate();
    forgetParked(recipient);
  }

  /** Details that could not be applied lie parked as they came, with name and address. */
  private void forgetParked(String key) {
    db.createNativeQuery("delete from inbox_parked where topic = 'people' and record_key = ?1")
        .setParameter(1, key)
        .executeUpdate();
  }
}
