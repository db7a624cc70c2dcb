package org.tapeline.notify.help;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Predicate;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.Guardian;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Moments;

/** The calls that are still to be made, with all that one needs for them. */
@ApplicationScoped
class CallList {
  private final Contacts contacts;
  private final Places places;
  private final Staff staff;

  CallList(Contacts contacts, Places places, Staff staff) {
    this.contacts = contacts;
    this.places = places;
    this.staff = staff;
  }

  /**
   * A call to be made.
   *
   * @param name of the guardian
   * @param players whom it concerns
   * @param language that the family reads, as an English word
   * @param asked day and time, by the field's clock
   */
  public record Call(
      UUID help,
      String name,
      Optional<Telephone> phone,
      Optional<String> mail,
      List<Child> players,
      String language,
      String field,
      String asked) {}

  /** A child by id and first name. */
  public record Child(UUID player, String name) {}

  /**
   * Longest waiting first.
   *
   * @param mine whether the caller looks after a field; a call without a field is asked with null
   */
  @Transactional
  List<Call> open(Predicate<String> mine) {
    return HelpCallRow.open().stream().filter(row -> mine.test(row.field)).map(this::call).toList();
  }

  private Call call(HelpCallRow row) {
    Optional<Guardian> guardian = Guardian.findByIdOptional(UUID.fromString(row.recipient));
    NoticeRow notice = NoticeRow.findById(row.notice);
    ZoneId zone = row.field == null ? staff.zone() : places.zoneOf(row.field);
    return new Call(
        row.help,
        guardian.map(g -> g.name).orElse("erased"),
        guardian.map(g -> g.phone).flatMap(Telephone::of),
        guardian.map(g -> g.email),
        notice.players.stream()
            .sorted()
            .flatMap(p -> contacts.firstName(p).map(name -> new Child(p, name)).stream())
            .toList(),
        guardian.filter(g -> g.language.equals(Language.SPANISH.code())).isPresent()
            ? "Spanish"
            : "English",
        row.field == null ? "not known" : places.nameOf(row.field),
        Moments.date(row.askedAt, zone, Language.ENGLISH)
            + ", "
            + Moments.time(row.askedAt, zone, Language.ENGLISH));
  }
}
