package org.tapeline.notify.digest;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;

/** A field's day: who comes when, who must not wear a helmet, which re-fits are open. */
@ApplicationScoped
class FieldDay implements Digest {
  private final Staff staff;
  private final Places places;
  private final EntityManager db;

  FieldDay(Staff staff, Places places, EntityManager db) {
    this.staff = staff;
    this.places = places;
    this.db = db;
  }

  @Override
  public NoticeKind kind() {
    return NoticeKind.FIELD_DAY;
  }

  @Override
  public List<String> recipients() {
    return staff.fields().stream().flatMap(field -> staff.fitters(field).stream()).toList();
  }

  @Override
  public Content of(String recipient, ZoneId zone, Instant now, Phrases phrases) {
    String field = staff.placeOf(recipient).orElseThrow();
    LocalDate day = now.atZone(zone).toLocalDate();
    List<OpenCase> booked =
        OpenCase.booked(
            db,
            field,
            day.atStartOfDay(zone).toInstant(),
            day.plusDays(1).atStartOfDay(zone).toInstant());
    Set<UUID> today = booked.stream().map(OpenCase::player).collect(Collectors.toSet());
    List<OpenCase> others =
        OpenCase.of(db, field).stream().filter(c -> !today.contains(c.player())).toList();
    List<OpenCase> stop = others.stream().filter(OpenCase::stop).toList();
    List<OpenCase> open = others.stream().filter(c -> !c.stop()).toList();
    List<Letter.Section> sections = new ArrayList<>();
    Content.add(sections, phrases, "list.booked", booked, c -> booked(c, zone, phrases));
    Content.add(sections, phrases, "list.stop", stop, c -> waiting(c, "stop", zone, phrases));
    Content.add(sections, phrases, "list.open", open, c -> waiting(c, "open", zone, phrases));
    return new Content(
        booked.size(),
        places.nameOf(field),
        sections,
        named(booked, stop, open),
        "link.today",
        "/fitting/today");
  }

  /** Only who is written down; erasing one of them erases the words. */
  private static List<UUID> named(List<OpenCase> booked, List<OpenCase> stop, List<OpenCase> open) {
    return Stream.of(booked, stop, open)
        .flatMap(list -> list.stream().limit(Phrases.MOST_IN_A_LIST))
        .map(OpenCase::player)
        .distinct()
        .toList();
  }

  private static String booked(OpenCase c, ZoneId zone, Phrases phrases) {
    String time = Moments.time(c.startsAt().orElseThrow(), zone, phrases.language());
    return line(
        time + " " + c.child(phrases.within("player.unknown")),
        phrases.within(c.stop() ? "urgency.do-not-wear" : "urgency.soon"),
        phrases);
  }

  private static String waiting(OpenCase c, String what, ZoneId zone, Phrases phrases) {
    String why =
        c.startsAt()
            .map(
                at ->
                    phrases.of(
                        "list." + what + "-booked",
                        Facts.none().with("date", Moments.date(at, zone, phrases.language()))))
            .orElseGet(() -> phrases.within("list." + what + "-waiting"));
    return line(c.child(phrases.within("player.unknown")), why, phrases);
  }

  private static String line(String who, String why, Phrases phrases) {
    return phrases.of("list.person", Facts.none().with("player", who).with("why", why));
  }
}
