package org.tapeline.notify.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.escalation.Surroundings;
import org.tapeline.notify.help.HelpDesk;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Phrases;

/** Whom a family can call, and whether it can ask to be called. */
@ApplicationScoped
class HelpLines {
  private final Surroundings surroundings;
  private final Staff staff;
  private final Places places;
  private final Contacts contacts;
  private final HelpDesk desk;

  HelpLines(
      Surroundings surroundings, Staff staff, Places places, Contacts contacts, HelpDesk desk) {
    this.surroundings = surroundings;
    this.staff = staff;
    this.places = places;
    this.contacts = contacts;
    this.desk = desk;
  }

  /**
   * Help on a page.
   *
   * @param lines whom to call; empty when no number is set
   * @param canAsk whether there is a number of the family that staff could call
   * @param asked whether a call was asked for today
   */
  record Help(List<Line> lines, boolean canAsk, boolean asked) {}

  /** Somebody to call. */
  record Line(String label, Telephone phone) {}

  /** In the caller's transaction. */
  Help of(NoticeRow notice, Phrases phrases) {
    Stream<Optional<Line>> fitters =
        surroundings.fieldsOf(notice.notice).stream()
            .map(
                field ->
                    line(
                        staff.fitters(field),
                        phrases.of(
                            "page.help.fitters",
                            Facts.none().with("place", places.nameOf(field)))));
    Stream<Optional<Line>> manager =
        Stream.of(line(Optional.of(Staff.MANAGER), phrases.of("page.help.manager")));
    return new Help(
        Stream.concat(fitters, manager).flatMap(Optional::stream).toList(),
        contacts.phoneOf(UUID.fromString(notice.recipient)).isPresent(),
        desk.asked(notice));
  }

  private Optional<Line> line(Optional<String> recipient, String label) {
    return recipient
        .flatMap(staff::phoneOf)
        .flatMap(Telephone::of)
        .map(phone -> new Line(label, phone));
  }
}
