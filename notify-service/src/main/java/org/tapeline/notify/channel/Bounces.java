package org.tapeline.notify.channel;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.Query;
import java.time.Instant;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Hard bounces, as far as the servers' answers tell: a bounce that comes back later as a mail is
 * not seen here. Always in the caller's transaction.
 */
@ApplicationScoped
public class Bounces {

  /** Channels whose last answer for this recipient was a hard bounce. */
  public Set<String> of(String recipient) {
    return BounceRow.<BounceRow>list("recipient", recipient).stream()
        .map(row -> row.channel)
        .collect(Collectors.toUnmodifiableSet());
  }

  void note(String recipient, String channel, String code, Instant now) {
    BounceRow.getEntityManager()
        .createNativeQuery(
            """
            insert into bounce (recipient, channel, code, at) values (?1, ?2, ?3, ?4)
            on conflict (recipient, channel) do update set code = excluded.code, at = excluded.at
            """)
        .setParameter(1, recipient)
        .setParameter(2, channel)
        .setParameter(3, code)
        .setParameter(4, now)
        .executeUpdate();
  }

  /** Something about the person changed, which may be the address. */
  public void forget(String recipient) {
    forget("delete from bounce where recipient = ?1", recipient);
  }

  /** The address works again. */
  void forget(String recipient, String channel) {
    forget("delete from bounce where recipient = ?1 and channel = ?2", recipient, channel);
  }

  private static void forget(String statement, String... which) {
    Query delete = BounceRow.getEntityManager().createNativeQuery(statement);
    for (int i = 0; i < which.length; i++) {
      delete.setParameter(i + 1, which[i]);
    }
    delete.executeUpdate();
  }
}
