package org.tapeline.notify.unreached;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.notify.escalation.StaffMatters;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.staff.StaffNoticeWriter;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** Tells staff of all people whom they are to reach, in one notice for each recipient. */
@ApplicationScoped
public class NotReachedNotices {
  private final StaffMatters matters;
  private final UnreachedPeople people;
  private final StaffNoticeWriter writer;
  private final Staff staff;
  private final Places places;
  private final Words words;

  NotReachedNotices(
      StaffMatters matters,
      UnreachedPeople people,
      StaffNoticeWriter writer,
      Staff staff,
      Places places,
      Words words) {
    this.matters = matters;
    this.people = people;
    this.writer = writer;
    this.staff = staff;
    this.places = places;
    this.words = words;
  }

  @Transactional
  List<String> due(Instant now) {
    return matters.due(now);
  }

  @Transactional
  void tell(String recipient, Instant now) {
    matters.take(
        recipient, now, notices -> tell(recipient, people.of(notices, StaffList.MOST), notices));
  }

  /** Who was reached meanwhile is left out; when nobody is left there is nothing to tell. */
  private Optional<UUID> tell(String recipient, UnreachedPeople.Found who, List<UUID> notices) {
    UUID about = DerivedId.from(notices.getFirst(), "not-reached/" + notices.size());
    if (who.shown().isEmpty()) {
      return Optional.empty();
    }
    Phrases phrases = words.phrases(staff.languageOf(recipient));
    StaffList list = StaffList.of(who, phrases);
    Facts facts =
        Facts.none()
            .with("quantity", families(who.families(), phrases))
            .with("place", place(recipient, phrases));
    NoticeRow first = NoticeRow.findById(notices.getFirst());
    writer.raise(
        new StaffNoticeWriter.Draft(
            NoticeKind.NOT_REACHED,
            about,
            recipient,
            who.shown().getFirst().urgency(),
            facts,
            "link.unreached",
            "/notify/unreached",
            list.players(),
            Optional.empty(),
            List.of(new Letter.Section(phrases.of("list.not-reached"), list.lines()))),
        list.causes(),
        new Cause(first.raisedEvent, first.correlationId, "not-reached"));
    return Optional.of(Notices.idOf(NoticeKind.NOT_REACHED, about, recipient));
  }

  /** Such as {@code 3 families}, in the middle of a sentence. */
  static String families(int count, Phrases phrases) {
    return count == 1
        ? phrases.within("families.one")
        : phrases.of("families.many", Facts.none().with("quantity", Integer.toString(count)));
  }

  private String place(String recipient, Phrases phrases) {
    return staff
        .placeOf(recipient)
        .map(places::nameOf)
        .orElseGet(() -> phrases.within("fields.all"));
  }
}
