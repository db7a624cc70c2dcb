package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.mail.RefitCalendar;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Phrases;

/** The calendar file of a notice: an entry for each slot that it tells. */
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

  /** Empty when no slot is told. */
  Optional<String> of(List<Piece> pieces, Phrases phrases, Instant now) {
    List<RefitCalendar.Entry> entries =
        pieces.stream()
            .filter(p -> p.tell().slot().isPresent())
            .map(p -> entry(p, p.tell().slot().get(), phrases, now))
            .toList();
    return entries.isEmpty() ? Optional.empty() : Optional.of(calendar.write(entries));
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
