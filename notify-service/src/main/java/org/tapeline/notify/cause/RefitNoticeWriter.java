package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.cause.RefitCase.CalledOff;
import org.tapeline.notify.cause.RefitCase.Opening;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.mail.RefitCalendar;
import org.tapeline.notify.notice.NewNotice;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.TradeWords;
import org.tapeline.notify.words.Words;

/** Writes a guardian's notice of a re-fit case: words, link and calendar file. */
@ApplicationScoped
public class RefitNoticeWriter {
  private final Notices notices;
  private final Words words;
  private final Contacts contacts;
  private final Places places;
  private final NoticeLinks links;
  private final RefitCalendar calendar;
  private final Clock clock;

  RefitNoticeWriter(
      Notices notices,
      Words words,
      Contacts contacts,
      Places places,
      NoticeLinks links,
      RefitCalendar calendar,
      Clock clock) {
    this.notices = notices;
    this.words = words;
    this.contacts = contacts;
    this.places = places;
    this.links = links;
    this.calendar = calendar;
    this.clock = clock;
  }

  void tell(Step.Tell tell, RefitCase refitCase, UUID correlationId, Guardian guardian) {
    String recipient = guardian.guardian.toString();
    if (notices.raisedBefore(tell.kind(), tell.about(), recipient)) {
      return;
    }
    Instant now = clock.instant();
    Language language = Language.of(guardian.language).orElse(Language.ENGLISH);
    Phrases phrases = words.phrases(language);
    Facts facts = facts(tell, refitCase, phrases);
    UUID id = Notices.idOf(tell.kind(), tell.about(), recipient);
    Letter.Link link = new Letter.Link(phrases.of("link.guardian"), links.addressOf(id, now), true);
    notices.raise(
        new NewNotice(
            id,
            tell.kind(),
            tell.about(),
            recipient,
            tell.urgency(),
            List.of(refitCase.player()),
            tell.causes(),
            Optional.of(refitCase.id()),
            tell.slot().map(Booking::startsAt),
            tell.slot().map(Booking::field),
            tell.template(),
            words.template(language, tell.template()).version(),
            words.write(language, tell.template(), facts, link),
            tell.slot().map(slot -> calendar(refitCase, slot, phrases, facts, now))),
        new Cause(tell.causes().getLast(), correlationId, "notice"));
  }

  private Facts facts(Step.Tell tell, RefitCase refitCase, Phrases phrases) {
    Opening opening = refitCase.opening().orElseThrow();
    Facts facts =
        Facts.none()
            .with(
                "player",
                contacts.firstName(refitCase.player()).orElse(phrases.within("player.unknown")))
            .with("team", TradeWords.team(opening.team()));
    facts =
        facts
            .with("why", phrases.why(opening.why(), facts))
            .with("until", phrases.of("until." + tell.urgency().code()));
    Optional<Booking> said = tell.slot().or(() -> refitCase.calledOff().map(CalledOff::was));
    return said.isPresent() ? withSlot(facts, said.get(), phrases.language()) : facts;
  }

  private Facts withSlot(Facts facts, Booking slot, Language language) {
    return facts
        .with("date", Moments.date(slot.startsAt(), slot.zone(), language))
        .with("time", Moments.time(slot.startsAt(), slot.zone(), language))
        .with("ends", Moments.time(slot.endsAt(), slot.zone(), language))
        .with("place", places.nameOf(slot.field()));
  }

  private String calendar(
      RefitCase refitCase, Booking slot, Phrases phrases, Facts facts, Instant now) {
    return calendar.write(
        new RefitCalendar.Entry(
            refitCase.id(),
            Math.toIntExact(slot.revision()),
            now,
            slot.startsAt(),
            slot.endsAt(),
            phrases.of("calendar.summary", facts),
            facts.get("place"),
            phrases.of("calendar.description", facts)));
  }
}
