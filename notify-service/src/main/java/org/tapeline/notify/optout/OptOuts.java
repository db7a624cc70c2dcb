package org.tapeline.notify.optout;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.notify.link.NoticeLinks.TurnOff;

/** Remembers who turned off what is not about safety: an event a person, which is the proof. */
@ApplicationScoped
public class OptOuts {
  private static final String MAIL = "mail";

  private final Journal journal;
  private final Clock clock;

  OptOuts(Journal journal, Clock clock) {
    this.journal = journal;
    this.clock = clock;
  }

  /** In the caller's transaction. */
  public boolean has(String recipient) {
    return OptOutRow.findByIdOptional(recipient).isPresent();
  }

  /** Asking again changes nothing: the row comes first, and decides. */
  @Transactional
  public void turnOff(TurnOff asked) {
    Instant now = clock.instant();
    String recipient = asked.recipient().toString();
    int rows =
        OptOutRow.getEntityManager()
            .createNativeQuery(
                """
                insert into opt_out (recipient, version, notice, at) values (?1, 1, ?2, ?3)
                on conflict do nothing
                """)
            .setParameter(1, recipient)
            .setParameter(2, asked.notice())
            .setParameter(3, now)
            .executeUpdate();
    if (rows == 1) {
      UUID cause = DerivedId.from(asked.notice(), "opt-out/" + recipient);
      journal.append(
          StreamName.of("optout", recipient, recipient),
          0,
          List.of(new OptedOut(asked.recipient(), MAIL, asked.notice(), now)),
          Cause.command(cause));
    }
  }
}
