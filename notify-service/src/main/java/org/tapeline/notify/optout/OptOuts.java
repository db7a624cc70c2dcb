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
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.notify.link.NoticeLinks.TurnOff;

/**
 * Remembers who turned off what is not about safety: an event for each turn, which is the proof.
 */
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
    return OptOutRow.<OptOutRow>findByIdOptional(recipient).filter(row -> row.off).isPresent();
  }

  /** What was turned off and on, oldest first; in the caller's transaction. */
  public List<RecordedEvent> history(String recipient) {
    return journal.load(StreamName.of("optout", recipient, recipient));
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
                insert into opt_out (recipient, version, notice, at, off)
                values (?1, 1, ?2, ?3, true)
                on conflict (recipient) do update set version = opt_out.version + 1,
                  notice = excluded.notice, at = excluded.at, off = true
                where not opt_out.off
                """)
            .setParameter(1, recipient)
            .setParameter(2, asked.notice())
            .setParameter(3, now)
            .executeUpdate();
    if (rows == 1) {
      record(recipient, new OptedOut(asked.recipient(), MAIL, asked.notice(), now));
    }
  }

  /**
   * Turns on again what was turned off; of what is on nothing changes.
   *
   * @param by {@code guardian} or {@code staff}
   */
  @Transactional
  public void turnOn(UUID guardian, String by) {
    Instant now = clock.instant();
    String recipient = guardian.toString();
    int rows =
        OptOutRow.update(
            "off = false, version = version + 1, at = ?1 where recipient = ?2 and off = true",
            now,
            recipient);
    if (rows == 1) {
      record(recipient, new OptedIn(guardian, by, now));
    }
  }

  /** The row is locked, so that the version is the stream's. */
  private void record(String recipient, Record event) {
    StreamName stream = StreamName.of("optout", recipient, recipient);
    long before = journal.version(stream);
    UUID cause = DerivedId.from(UUID.fromString(recipient), "opt-out/" + (before + 1));
    journal.append(stream, before, List.of(event), Cause.command(cause));
  }
}
