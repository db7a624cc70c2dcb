package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.cause.RefitCase.CalledOff;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.notice.CauseName.Recipient;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeCovers;
import org.tapeline.notify.notice.NoticeCovers.Covered;
import org.tapeline.notify.notice.Urgency;

/**
 * Puts re-fit cases together and tells the guardians whatever is due. A case is looked at whenever
 * something of it, or of its people, becomes known, and when its wait is over; looking again does
 * nothing that was done before.
 */
@ApplicationScoped
public class RefitCases {
  private final NoticeCovers covers;
  private final CauseTable table;
  private final Windows windows;
  private final Contacts contacts;
  private final Telling telling;
  private final Clock clock;

  RefitCases(
      NoticeCovers covers,
      CauseTable table,
      Windows windows,
      Contacts contacts,
      Telling telling,
      Clock clock) {
    this.covers = covers;
    this.table = table;
    this.windows = windows;
    this.contacts = contacts;
    this.telling = telling;
    this.clock = clock;
  }

  void on(RefitOpened opened, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(opened.refitCase(), opened.player());
    Urgency urgency = Urgency.of(opened.urgency());
    row.opened(
        opened,
        event,
        clock.instant().plus(windows.of(WhenRefitCaseMovesThenTellGuardian.opened(urgency))));
    FitRow.lookSoon(opened.player(), clock.instant());
    look(List.of(row));
  }

  void on(RefitBooked booked, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(booked.refitCase(), booked.player());
    row.booked(booked, event);
    look(List.of(row));
  }

  void on(RefitUnbooked unbooked, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(unbooked.refitCase(), unbooked.player());
    row.unbooked(event);
    look(List.of(row));
  }

  void on(RefitClosed closed, ReceivedEvent event) {
    RefitCaseRow row = RefitCaseRow.lockedOrNew(closed.refitCase(), closed.player());
    row.closed(closed, event);
    FitRow.lookSoon(closed.player(), clock.instant());
    look(List.of(row));
    covers.caseIsOver(row.refitCase);
  }

  /** Details of these players or of their guardians changed, in the caller's transaction. */
  public void lookAgain(Collection<UUID> players) {
    look(players.stream().sorted().flatMap(p -> RefitCaseRow.lockedOpenOf(p).stream()).toList());
  }

  /**
   * Looks at cases whose wait is over, some at a time.
   *
   * @return how many there were
   */
  @Transactional
  public int lookAtWaiting(int limit) {
    List<RefitCaseRow> due = RefitCaseRow.waitedUntil(clock.instant(), limit);
    look(due);
    due.forEach(row -> row.waitUntil = null);
    return due.size();
  }

  private void look(List<RefitCaseRow> rows) {
    Set<RefitCaseRow> waiting =
        telling.tell(rows, row -> row.player, RefitCases::ofChildren, this::ready);
    for (RefitCaseRow row : rows) {
      if (row.waitUntil != null && !waiting.contains(row) && complete(row)) {
        row.waitUntil = null;
      }
    }
  }

  /** Whether there is nothing left to wait for of the case: the date and the name are known. */
  private boolean complete(RefitCaseRow row) {
    return row.view().booking().isPresent() && contacts.firstName(row.player).isPresent();
  }

  private static List<RefitCaseRow> ofChildren(Guardian guardian) {
    return RefitCaseRow.openOf(guardian.players);
  }

  private Telling.Ready ready(RefitCaseRow row, Guardian guardian) {
    boolean waitIsOver = row.waitUntil == null || !clock.instant().isBefore(row.waitUntil);
    if (!waitIsOver && contacts.firstName(row.player).isEmpty()) {
      return Telling.Ready.NOTHING;
    }
    RefitCase refitCase = row.view();
    List<Covered> covered = covers.ofCase(refitCase.id(), guardian.guardian.toString());
    ToldSoFar told =
        ToldSoFar.of(covered.stream().filter(c -> !c.pending()).map(Covered::told).toList());
    List<Piece> pieces =
        WhenRefitCaseMovesThenTellGuardian.react(table, refitCase, told, waitIsOver).stream()
            .filter(Step.Tell.class::isInstance)
            .map(Step.Tell.class::cast)
            .filter(tell -> table.tells(tell.cause(), Recipient.GUARDIANS))
            .map(tell -> piece(tell, row, refitCase, told))
            .toList();
    String why = refitCase.closing().isPresent() ? "case-closed" : "overtaken";
    return telling.unsaid(pieces, covered, guardian, why, newest(row, refitCase));
  }

  private Piece piece(Step.Tell tell, RefitCaseRow row, RefitCase refitCase, ToldSoFar told) {
    return new Piece(
        tell,
        row.player,
        Optional.of(refitCase.id()),
        List.of(tell.about()),
        row.correlationId,
        Optional.ofNullable(row.why),
        Optional.ofNullable(row.team),
        tell.slot()
            .or(() -> refitCase.calledOff().map(off -> known(off, told)))
            .or(refitCase::booking),
        table.of(tell.cause()).household(),
        refitCase.booking().isPresent(),
        row.waitUntil == null ? clock.instant() : row.waitUntil);
  }

  /** The date that a person was told, which may be an earlier one than the last that was booked. */
  private static Booking known(CalledOff off, ToldSoFar told) {
    Booking was = off.was();
    return told.slot()
        .filter(slot -> !slot.equals(was.slot()))
        .map(
            slot ->
                new Booking(
                    was.event(),
                    was.revision(),
                    slot.field(),
                    slot.startsAt(),
                    slot.startsAt().plusSeconds(1),
                    was.zone()))
        .orElse(was);
  }

  private static Cause newest(RefitCaseRow row, RefitCase refitCase) {
    UUID event =
        refitCase
            .closing()
            .map(RefitCase.Closing::event)
            .or(() -> refitCase.calledOff().map(CalledOff::event))
            .or(() -> refitCase.booking().map(Booking::event))
            .orElse(row.openedEvent);
    return new Cause(
        event == null ? row.refitCase : event,
        row.correlationId == null ? row.refitCase : row.correlationId,
        "taken-back");
  }
}
