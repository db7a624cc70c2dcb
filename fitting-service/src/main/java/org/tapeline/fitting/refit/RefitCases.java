package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.fitting.refit.RefitEvent.RefitBooked;
import org.tapeline.fitting.refit.RefitEvent.RefitClosed;
import org.tapeline.fitting.refit.RefitEvent.RefitOpened;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.Need;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Re-fit cases, one open at most a player; always in the caller's transaction. */
@ApplicationScoped
public class RefitCases {
  private final Journal journal;
  private final FitDays fitDays;
  private final Clock clock;

  RefitCases(Journal journal, FitDays fitDays, Clock clock) {
    this.journal = journal;
    this.fitDays = fitDays;
    this.clock = clock;
  }

  /**
   * Opens a case. One that is open already is over: what the player needs now is the newer word.
   */
  public void open(UUID player, String why, Optional<String> tag, List<Need> needs, Cause cause) {
    close(player, "cancelled", cause.step("replaced"));
    UUID refitCase = DerivedId.from(cause.id(), "refit/" + player);
    PlayerCopy copy = PlayerCopy.findById(player);
    RefitOpened opened =
        new RefitOpened(
            refitCase,
            player,
            copy == null || copy.field == null ? "UNKNOWN" : copy.field,
            copy == null || copy.team == null ? "UNKNOWN" : copy.team,
            "do-not-wear",
            why,
            tag,
            needs,
            clock.instant());
    append(refitCase, player, opened, cause.step("open-refit"));
    RefitCaseRow row = new RefitCaseRow();
    row.refitCase = refitCase;
    row.player = player;
    row.field = opened.field();
    row.team = opened.team();
    row.urgency = opened.urgency();
    row.why = why;
    row.tag = tag.orElse(null);
    row.status = "open";
    row.openedAt = opened.at();
    row.persistAndFlush();
    needs.forEach(need -> keepNeed(refitCase, need));
  }

  private static void keepNeed(UUID refitCase, Need need) {
    if (RefitNeedRow.findById(new RefitNeedRow.Key(refitCase, need.key())) == null) {
      RefitNeedRow row = new RefitNeedRow();
      row.refitCase = refitCase;
      row.needKey = need.key();
      row.need = need.kind();
      row.persist();
    }
  }

  /** Closes the player's open case, if there is one, and frees its slot. */
  public void close(UUID player, String outcome, Cause cause) {
    Optional<RefitCaseRow> open = RefitCaseRow.openOf(player);
    if (open.isEmpty()) {
      return;
    }
    RefitCaseRow row = open.get();
    append(
        row.refitCase,
        player,
        new RefitClosed(row.refitCase, player, outcome, clock.instant()),
        cause.step("close-refit"));
    row.status = "closed";
    row.persistAndFlush();
    fitDays.free(row.refitCase);
  }

  /** A need will be there at that time. */
  public void arrives(UUID refitCase, String needKey, Instant at, boolean waits, Cause cause) {
    RefitNeedRow need = RefitNeedRow.findById(new RefitNeedRow.Key(refitCase, needKey));
    if (need == null) {
      return;
    }
    need.arrivesAt = at;
    need.waits = waits;
    need.persistAndFlush();
    bookIfReady(refitCase, cause);
  }

  /** Books a case whose needs are all known, unless it has a slot that is late enough. */
  public void bookIfReady(UUID refitCase, Cause cause) {
    RefitCaseRow row = RefitCaseRow.findById(refitCase);
    List<RefitNeedRow> needs = RefitNeedRow.of(refitCase);
    boolean known = needs.stream().allMatch(need -> need.arrivesAt != null);
    if (row == null || !row.status.equals("open") || !known) {
      return;
    }
    Instant arrival =
        needs.stream().map(n -> n.arrivesAt).max(Comparator.naturalOrder()).orElseThrow();
    Instant now = clock.instant();
    Instant earliest = arrival.isAfter(now) ? arrival : now;
    Optional<Booking> has = fitDays.bookingOf(refitCase);
    if (has.isPresent() && !has.get().startsAt().isBefore(arrival)) {
      return;
    }
    boolean waits = needs.stream().anyMatch(n -> n.waits);
    fitDays
        .rebook(refitCase, row.field, earliest)
        .ifPresent(booking -> booked(row, booking, waits, cause));
  }

  private void booked(RefitCaseRow row, Booking booking, boolean waits, Cause cause) {
    append(
        row.refitCase,
        row.player,
        new RefitBooked(
            row.refitCase,
            row.player,
            booking.field(),
            booking.fitDay(),
            booking.startsAt(),
            booking.endsAt(),
            booking.zone(),
            waits,
            clock.instant()),
        cause.step("book-refit"));
  }

  private void append(UUID refitCase, UUID player, RefitEvent event, Cause cause) {
    StreamName stream = StreamName.of("refit", refitCase, player);
    int version = journal.load(stream).size();
    journal.append(stream, version, List.of((Record) event), cause);
  }
}
