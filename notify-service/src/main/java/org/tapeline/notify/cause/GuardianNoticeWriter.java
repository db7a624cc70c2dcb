package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.notice.Cover;
import org.tapeline.notify.notice.NewNotice;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** Writes a guardian's notice of one child, or of several: words, link and calendar file. */
@ApplicationScoped
class GuardianNoticeWriter {
  private static final Map<NoticeKind, String> FOR_SEVERAL =
      Map.of(
          NoticeKind.DO_NOT_WEAR_REFIT, "do-not-wear-household",
          NoticeKind.REFIT_SOON, "refit-soon-household");

  private static final String CHANGED = "refit-changed";
  private static final String CHOSEN = "refit-chosen";

  private final Notices notices;
  private final Words words;
  private final PieceFacts facts;
  private final PieceCalendar calendar;
  private final NoticeLinks links;
  private final OpenRefits refits;
  private final Clock clock;

  GuardianNoticeWriter(
      Notices notices,
      Words words,
      PieceFacts facts,
      PieceCalendar calendar,
      NoticeLinks links,
      OpenRefits refits,
      Clock clock) {
    this.notices = notices;
    this.words = words;
    this.facts = facts;
    this.calendar = calendar;
    this.links = links;
    this.refits = refits;
    this.clock = clock;
  }

  /**
   * @param pieces what is told together: of one kind, at least one
   */
  void tell(List<Piece> pieces, Guardian guardian) {
    Step.Tell first = pieces.getFirst().tell();
    String recipient = guardian.guardian.toString();
    Instant now = clock.instant();
    Language language = Language.of(guardian.language).orElse(Language.ENGLISH);
    Phrases phrases = words.phrases(language);
    UUID id = Notices.nextId(first.kind(), first.about(), recipient);
    boolean cases = pieces.stream().allMatch(p -> p.refitCase().isPresent());
    Letter.Link link =
        new Letter.Link(
            phrases.of(cases ? "link.guardian" : "link.check"), links.addressOf(id, now), true);
    String template =
        pieces.size() == 1
            ? template(pieces.getFirst(), recipient)
            : FOR_SEVERAL.getOrDefault(first.kind(), first.template());
    Facts said =
        pieces.size() == 1 ? facts.of(pieces.getFirst(), phrases) : facts.of(pieces, phrases);
    notices.raise(
        new NewNotice(
            id,
            first.kind(),
            first.about(),
            recipient,
            first.urgency(),
            pieces.stream().map(Piece::player).distinct().toList(),
            pieces.stream().flatMap(p -> p.tell().causes().stream()).distinct().toList(),
            only(pieces).flatMap(Piece::refitCase),
            only(pieces).flatMap(GuardianNoticeWriter::day),
            only(pieces).flatMap(p -> p.tell().slot()).map(Booking::field),
            template,
            words.template(language, template).version(),
            words.write(language, template, said, link),
            calendar.of(pieces, phrases, now),
            pieces.stream().flatMap(p -> covers(p).stream()).toList()),
        new Cause(first.causes().getLast(), pieces.getFirst().correlationId(), "notice"));
  }

  /** Whoever chose the new date is told that it is booked, not that it has changed. */
  private String template(Piece piece, String recipient) {
    String template = piece.tell().template();
    return template.equals(CHANGED)
            && piece.refitCase().filter(id -> refits.chosenBy(id, recipient)).isPresent()
        ? CHOSEN
        : template;
  }

  private static Optional<Piece> only(List<Piece> pieces) {
    return pieces.size() == 1 ? Optional.of(pieces.getFirst()) : Optional.empty();
  }

  private static Optional<Instant> day(Piece piece) {
    return piece.tell().slot().map(Booking::startsAt).or(piece.tell()::by);
  }

  private static List<Cover> covers(Piece piece) {
    return piece.covers().stream()
        .map(
            about ->
                new Cover(
                    about,
                    piece.refitCase(),
                    Optional.of(piece.player()),
                    day(piece),
                    piece.tell().slot().map(Booking::field)))
        .toList();
  }
}
