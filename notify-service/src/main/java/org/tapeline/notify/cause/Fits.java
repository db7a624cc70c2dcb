package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.notify.cause.FitWords.RecheckDue;
import org.tapeline.notify.cause.FitWords.SignOffLapsed;
import org.tapeline.notify.cause.FitWords.SignOffWithdrawn;
import org.tapeline.notify.cause.FitWords.SignedOff;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseName.Recipient;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeCovers;
import org.tapeline.notify.notice.NoticeCovers.Covered;
import org.tapeline.notify.notice.NoticeKind;

/** Tells guardians of re-checks that are due and of sign-offs that lapsed. */
@ApplicationScoped
public class Fits {
  private final NoticeCovers covers;
  private final CauseTable table;
  private final Windows windows;
  private final Telling telling;
  private final Clock clock;

  Fits(NoticeCovers covers, CauseTable table, Windows windows, Telling telling, Clock clock) {
    this.covers = covers;
    this.table = table;
    this.windows = windows;
    this.telling = telling;
    this.clock = clock;
  }

  public Subscription declareOn(Subscription subscription) {
    String fitting = "org.tapeline.fitting.";
    return subscription
        .on(fitting + "recheck-due.v1", RecheckDue.class, this::on)
        .on(fitting + "signed-off.v3", SignedOff.class, this::on)
        .upcast(fitting + "signed-off.v1", v1 -> v1)
        .upcast(fitting + "signed-off.v2", v2 -> v2)
        .on(
            fitting + "sign-off-withdrawn.v1",
            SignOffWithdrawn.class,
            (e, event) -> ended(e.player(), Fit.State.WITHDRAWN, e.why(), e.at(), event))
        .on(
            fitting + "sign-off-lapsed.v1",
            SignOffLapsed.class,
            (e, event) -> ended(e.player(), Fit.State.LAPSED, e.why(), e.at(), event));
  }

  private void on(RecheckDue due, ReceivedEvent event) {
    FitRow row = FitRow.lockedOrNew(due.player());
    RecheckRow recheck = new RecheckRow();
    recheck.event = event.id();
    recheck.player = due.player();
    recheck.dueAt = due.at();
    recheck.lapsesAt = due.lapsesAt().orElse(null);
    recheck.correlationId = event.correlationId();
    recheck.persist();
    row.waits(clock.instant().plus(windows.of(CauseName.RECHECK_DUE)));
    look(List.of(row));
  }

  private void on(SignedOff signedOff, ReceivedEvent event) {
    FitRow row = FitRow.lockedOrNew(signedOff.player());
    boolean quiet = nothingToSay(row);
    if (row.says(Fit.State.SIGNED_OFF, "", signedOff.at(), event) && !quiet) {
      RecheckRow.delete("player = ?1 and dueAt < ?2", row.player, signedOff.at());
      look(List.of(row));
      covers.fitIsNew(row.player, RecheckRow.of(row.player).stream().map(r -> r.event).toList());
    }
  }

  private void ended(UUID player, Fit.State state, String why, Instant at, ReceivedEvent event) {
    FitRow row = FitRow.lockedOrNew(player);
    boolean quiet = nothingToSay(row) && state != Fit.State.LAPSED;
    if (row.says(state, why, at, event) && !quiet) {
      row.waitUntil = clock.instant().plus(windows.of(CauseName.SIGN_OFF_LAPSED));
      look(List.of(row));
    }
  }

  /** Of most players there is nothing: a hold that withdraws thousands need not look at each. */
  private static boolean nothingToSay(FitRow row) {
    return row.word().filter(word -> word.state() == Fit.State.LAPSED).isEmpty()
        && RecheckRow.of(row.player).isEmpty();
  }

  /** Details of these players or of their guardians changed, in the caller's transaction. */
  void lookAgain(Collection<UUID> players) {
    look(FitRow.lockedOf(players));
  }

  /**
   * Looks at those whose wait is over, some at a time.
   *
   * @return how many there were
   */
  @Transactional
  public int lookAtWaiting(int limit) {
    List<FitRow> due = FitRow.waitedUntil(clock.instant(), limit);
    look(due);
    due.forEach(row -> row.waitUntil = null);
    return due.size();
  }

  private void look(List<FitRow> rows) {
    Set<FitRow> waiting =
        telling.tell(rows, row -> row.player, g -> FitRow.ofAll(g.players), this::ready);
    for (FitRow row : rows) {
      if (row.waitUntil != null && !waiting.contains(row)) {
        row.waitUntil = null;
      }
    }
  }

  private Telling.Ready ready(FitRow row, Guardian guardian) {
    Instant now = clock.instant();
    List<Covered> covered = covers.ofFit(row.player, guardian.guardian.toString());
    List<Fit.Told> told =
        covered.stream()
            .filter(c -> !c.pending() && !c.told().cancelled())
            .map(Fits::told)
            .toList();
    Fit fit = view(row);
    List<Piece> pieces =
        WhenFitIsDueThenTellGuardian.react(table, fit, told, now).stream()
            .filter(tell -> table.tells(tell.cause(), Recipient.GUARDIANS))
            .map(tell -> piece(tell, row, fit))
            .toList();
    UUID newest = row.event == null ? row.player : row.event;
    UUID chain = row.correlationId == null ? row.player : row.correlationId;
    return telling.unsaid(
        pieces, covered, guardian, "overtaken", new Cause(newest, chain, "taken-back"));
  }

  private static Fit.Told told(Covered covered) {
    return new Fit.Told(
        covered.told().kind(),
        covered.about(),
        covered.told().tried(),
        covered.told().slotStartsAt());
  }

  private static Fit view(FitRow row) {
    List<RefitCaseRow> cases = RefitCaseRow.openedOf(row.player);
    return new Fit(
        row.player,
        row.word(),
        RecheckRow.of(row.player).stream().map(RecheckRow::due).toList(),
        cases.stream().anyMatch(c -> c.outcome == null),
        cases.stream()
            .map(c -> c.openedAt)
            .filter(Objects::nonNull)
            .max(Comparator.naturalOrder()));
  }

  private Piece piece(Step.Tell tell, FitRow row, Fit fit) {
    boolean reminder = tell.kind() == NoticeKind.RECHECK_DUE;
    UUID chain =
        reminder ? RecheckRow.<RecheckRow>findById(tell.about()).correlationId : row.correlationId;
    return new Piece(
        tell,
        row.player,
        Optional.empty(),
        reminder ? tell.causes() : List.of(tell.about()),
        chain,
        fit.word().map(Fit.Word::why).filter(why -> !why.isEmpty()),
        Optional.empty(),
        Optional.empty(),
        table.of(tell.cause()).household(),
        false,
        row.waitUntil == null ? clock.instant() : row.waitUntil);
  }
}
