package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.notice.Notices;

/**
 * Puts re-fit cases together and tells the guardians whatever is due. A case is looked at whenever
 * something of it, or of its people, becomes known, and when its wait is over; looking again does
 * nothing that was done before.
 */
@ApplicationScoped
public class RefitCases {
  private final Notices notices;
  private final Contacts contacts;
  private final RefitNoticeWriter writer;
  private final Clock clock;
  private final Duration wait;

  RefitCases(
      Notices notices,
      Contacts contacts,
      RefitNoticeWriter writer,
      Clock clock,
      @ConfigProperty(name = "tapeline.refit.wait-for-date") Duration wait) {
    this.notices = notices;
    this.contacts = contacts;
    this.writer = writer;
    this.clock = clock;
    this.wait = wait;
  }

  void on(RefitOpened opened, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(opened.refitCase(), opened.player());
    row.opened(opened, event, clock.instant().plus(wait));
    look(row);
  }

  void on(RefitBooked booked, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(booked.refitCase(), booked.player());
    row.booked(booked, event);
    look(row);
  }

  void on(RefitUnbooked unbooked, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(unbooked.refitCase(), unbooked.player());
    row.unbooked(event);
    look(row);
  }

  void on(RefitClosed closed, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(closed.refitCase(), closed.player());
    row.closed(closed, event);
    look(row);
  }

  /** Details of these players or of their guardians changed, in the caller's transaction. */
  public void lookAgain(Collection<UUID> players) {
    players.stream().sorted().forEach(p -> RefitCaseRow.lockedOpenOf(p).forEach(this::look));
  }

  /**
   * Looks at cases whose wait is over, some at a time.
   *
   * @return how many there were
   */
  @Transactional
  public int lookAtWaiting(int limit) {
    List<?> due =
        RefitCaseRow.getEntityManager()
            .createNativeQuery(
                """
                select refit_case from refit_case where wait_until <= ?1
                order by wait_until limit ?2 for update skip locked
                """,
                UUID.class)
            .setParameter(1, clock.instant())
            .setParameter(2, limit)
            .getResultList();
    for (Object id : due) {
      RefitCaseRow row = RefitCaseRow.findById(id);
      look(row);
      row.waitUntil = null;
    }
    return due.size();
  }

  private void look(RefitCaseRow row) {
    RefitCase refitCase = row.view();
    Instant now = clock.instant();
    boolean waitIsOver = row.waitUntil == null || !now.isBefore(row.waitUntil);
    boolean named = contacts.firstName(row.player).isPresent();
    if (!named && !waitIsOver) {
      return;
    }
    for (Guardian guardian : Guardian.of(row.player)) {
      String recipient = guardian.guardian.toString();
      ToldSoFar told = ToldSoFar.of(notices.ofCase(refitCase.id(), recipient));
      for (Step step : WhenRefitCaseMovesThenTellGuardian.react(refitCase, told, waitIsOver)) {
        perform(step, refitCase, row.correlationId, guardian);
      }
    }
    if (named && refitCase.booking().isPresent()) {
      row.waitUntil = null;
    }
  }

  private void perform(Step step, RefitCase refitCase, UUID correlationId, Guardian guardian) {
    switch (step) {
      case Step.Tell tell -> writer.tell(tell, refitCase, correlationId, guardian);
      case Step.CancelUnsent c ->
          notices.cancelUntried(
              refitCase.id(),
              guardian.guardian.toString(),
              new Cause(refitCase.closing().orElseThrow().event(), correlationId, "overtaken"));
    }
  }
}
