package org.tapeline.notify.contact;

import java.util.Collection;
import java.util.UUID;

/**
 * Where what is to be told of a player meets whom to tell. The two come on different topics, are
 * read at the same time and do not see each other before they are committed: whoever comes second
 * waits for the first, so that a guardian who becomes known while a case opens hears of it.
 */
public final class Meeting {
  /** The lock of a player, in a statement whose parameter {@code ?2} is the player's id. */
  public static final String OF_PLAYER_2 =
      "(select pg_advisory_xact_lock(hashtextextended(cast(?2 as text), 18))) as meeting";

  private Meeting() {}

  /** Waits for whoever is at one of the players, and keeps others away until the end. */
  public static void of(Collection<UUID> players) {
    Guardian.getEntityManager()
        .createNativeQuery(
            """
            select count(pg_advisory_xact_lock(hashtextextended(player, 18)))
            from unnest(cast(?1 as text[])) as player
            """)
        .setParameter(1, players.stream().sorted().map(UUID::toString).toArray(String[]::new))
        .getSingleResult();
  }
}
