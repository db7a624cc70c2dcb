package org.tapeline.notify.help;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.Cause;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.staff.StaffNoticeWriter;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.NameList;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** Tells the field's fitters, or else the equipment manager, that a family wants a call. */
@ApplicationScoped
class HelpNotices {
  private final StaffNoticeWriter writer;
  private final Staff staff;
  private final Contacts contacts;
  private final Places places;
  private final Words words;

  HelpNotices(
      StaffNoticeWriter writer, Staff staff, Contacts contacts, Places places, Words words) {
    this.writer = writer;
    this.staff = staff;
    this.contacts = contacts;
    this.places = places;
    this.words = words;
  }

  void tell(HelpAsked asked, NoticeRow notice, Cause cause) {
    String recipient = asked.field().flatMap(staff::fitters).orElse(Staff.MANAGER);
    writer.raise(
        new StaffNoticeWriter.Draft(
            NoticeKind.HELP_ASKED,
            asked.help(),
            recipient,
            Urgency.SOON,
            facts(asked, notice, words.phrases(staff.languageOf(recipient))),
            "link.calls",
            "/notify/calls",
            notice.players.stream().sorted().toList(),
            Optional.ofNullable(notice.refitCase),
            List.of()),
        List.of(asked.help()),
        cause);
  }

  private Facts facts(HelpAsked asked, NoticeRow notice, Phrases phrases) {
    ZoneId zone = asked.field().map(places::zoneOf).orElse(staff.zone());
    List<String> names =
        notice.players.stream()
            .sorted()
            .flatMap(player -> contacts.firstName(player).stream())
            .toList();
    return Facts.none()
        .with(
            "player",
            names.isEmpty()
                ? phrases.within("player.unknown")
                : NameList.and(names, phrases.language()))
        .with("place", asked.field().map(places::nameOf).orElse(phrases.within("fields.all")))
        .with("date", Moments.date(asked.at(), zone, phrases.language()))
        .with("time", Moments.time(asked.at(), zone, phrases.language()));
  }
}
