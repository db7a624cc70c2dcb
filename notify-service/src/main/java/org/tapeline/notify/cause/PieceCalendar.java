package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.mail.RefitCalendar;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Phrases;

/** The calendar file of a notice: an entry for each slot that it tells or calls off. */
@ApplicationScoped
class PieceCalendar {
  private final RefitCalendar calendar;
  private final PieceFacts facts;
  private final Places places;

  PieceCalendar(RefitCalendar calendar, PieceFacts facts, Places places) {
    this.calendar = calendar;
    this.facts = facts;
    this.places = places;
  }

  /** Empty when no slot is told and none called off. */
  Optional<String> of(List<Piece> pieces, Phrases phrases, Instant now) {
    List<RefitCalendar.Entry> entries =
        pieces.stream()
            .filter(p -> p.tell().slot().isPresent())
            .map(p -> entry(p, p.tell().slot().get(), phrases, now))
            .toList();
    return entries.isEmpty()
        ? takenOut(pieces, phrases, now)
        : Optional.of(calendar.write(entries));
  }

  /** Takes dates that do not hold, or are not needed any more, out of the calendar again. */
  private Optional<String> takenOut(List<Piece> pieces, Phrases phrases, Instant now) {
    List<RefitCalendar.Entry> entries =
        pieces.stream()
            .flatMap(p -> off(p, now).map(slot -> entry(p, slot, phrases, now)).stream())
            .toList();
    return entries.isEmpty() ? Optional.empty() : Optional.of(calendar.cancel(entries));
  }

  private static Optional<Booking> off(Piece piece, Instant now) {
    if (piece.tell().kind() == NoticeKind.REFIT_UNBOOKED) {
      return piece.said();
    }
    return piece
        .said()
        .filter(slot -> piece.tell().kind() == NoticeKind.FITTED_AGAIN)
        .filter(slot -> slot.startsAt().isAfter(now))
        .map(Booking::revised);
  }

  private RefitCalendar.Entry entry(Piece piece, Booking slot, Phrases phrases, Instant now) {
    Facts player = Facts.none().with("player", facts.name(piece, phrases));
    return new RefitCalendar.Entry(
        piece.refitCase().orElseThrow(),
        Math.toIntExact(slot.revision()),
        now,
        slot.startsAt(),
        slot.endsAt(),
        phrases.of("calendar.summary", player),
        places.nameOf(slot.field()),
        phrases.of("calendar.description", player));
  }
}
