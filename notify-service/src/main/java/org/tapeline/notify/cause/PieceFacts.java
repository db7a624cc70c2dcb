package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.notify.cause.RefitCase.Booking;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.Zones;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.NameList;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.TradeWords;

/** What differs from notice to notice, in the reader's language. */
@ApplicationScoped
class PieceFacts {
  private final Contacts contacts;
  private final Places places;
  private final Zones zones;
  private final Clock clock;

  PieceFacts(Contacts contacts, Places places, Zones zones, Clock clock) {
    this.contacts = contacts;
    this.places = places;
    this.zones = zones;
    this.clock = clock;
  }

  /** Of one child. */
  Facts of(Piece piece, Phrases phrases) {
    Facts facts =
        Facts.none().with("player", name(piece, phrases)).with("team", team(piece, phrases));
    facts =
        facts
            .with("why", phrases.why(piece.why().orElse("other"), facts))
            .with("until", phrases.of("until." + piece.tell().urgency().code()))
            .with("dates", dates(List.of(piece), phrases));
    return piece.said().isPresent()
        ? withSlot(facts, piece.said().get(), phrases.language())
        : facts;
  }

  /** Of several children: all names, every reason, and each date once. */
  Facts of(List<Piece> pieces, Phrases phrases) {
    List<String> why =
        pieces.stream().map(piece -> of(piece, phrases).get("why")).distinct().toList();
    List<String> teams = pieces.stream().map(p -> team(p, phrases)).distinct().toList();
    return Facts.none()
        .with("player", names(pieces, phrases))
        .with("team", NameList.or(teams, phrases.language()))
        .with("why", String.join(" ", why))
        .with("dates", dates(pieces, phrases));
  }

  /** The first name, or "your player". */
  String name(Piece piece, Phrases phrases) {
    return contacts.firstName(piece.player()).orElse(phrases.within("player.unknown"));
  }

  private String names(List<Piece> pieces, Phrases phrases) {
    return NameList.and(
        pieces.stream().map(piece -> name(piece, phrases)).distinct().toList(), phrases.language());
  }

  private String team(Piece piece, Phrases phrases) {
    return piece
        .team()
        .or(() -> contacts.team(piece.player()))
        .map(TradeWords::team)
        .orElse(phrases.within("team.unknown"));
  }

  private Facts withSlot(Facts facts, Booking slot, Language language) {
    return facts
        .with("date", Moments.date(slot.startsAt(), slot.zone(), language))
        .with("time", Moments.time(slot.startsAt(), slot.zone(), language))
        .with("ends", Moments.time(slot.endsAt(), slot.zone(), language))
        .with("place", places.nameOf(slot.field()));
  }

  /** Such as {@code Saturday, September 13, at North Field: Mia and Leo 9:00 AM.} */
  private String dates(List<Piece> pieces, Phrases phrases) {
    Map<Facts, List<Piece>> byDay =
        pieces.stream()
            .collect(
                Collectors.groupingBy(
                    piece -> day(piece, phrases.language()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    boolean slots = pieces.getFirst().tell().kind() != NoticeKind.RECHECK_DUE;
    return byDay.entrySet().stream()
        .map(
            day ->
                phrases.of(
                    (slots ? "household" : "recheck")
                        + (day.getKey().byName().isEmpty() ? ".undated" : ".date"),
                    day.getKey()
                        .with("time", times(day.getValue(), phrases))
                        .with("player", names(day.getValue(), phrases))))
        .collect(Collectors.joining(" "));
  }

  private Facts day(Piece piece, Language language) {
    if (piece.tell().kind() == NoticeKind.RECHECK_DUE) {
      return piece.tell().by().map(at -> lastDay(piece, at, language)).orElse(Facts.none());
    }
    return piece
        .tell()
        .slot()
        .map(
            slot ->
                Facts.none()
                    .with("date", Moments.date(slot.startsAt(), slot.zone(), language))
                    .with("place", places.nameOf(slot.field())))
        .orElse(Facts.none());
  }

  /** The last whole day on which the sign-off holds, where the player is fitted. */
  private Facts lastDay(Piece piece, Instant lapsesAt, Language language) {
    ZoneId zone = zones.ofPlayer(piece.player());
    LocalDate last = lapsesAt.atZone(zone).toLocalDate().minusDays(1);
    LocalDate today = LocalDate.ofInstant(clock.instant(), zone);
    LocalDate day = last.isBefore(today) ? today : last;
    return Facts.none()
        .with("date", Moments.date(day.atStartOfDay(zone).toInstant(), zone, language));
  }

  /** Such as {@code Mia 9:00 AM, Leo 9:20 AM}. */
  private String times(List<Piece> pieces, Phrases phrases) {
    Map<Optional<String>, List<Piece>> byTime =
        pieces.stream()
            .collect(
                Collectors.groupingBy(
                    piece ->
                        piece
                            .tell()
                            .slot()
                            .map(s -> Moments.time(s.startsAt(), s.zone(), phrases.language())),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return byTime.entrySet().stream()
        .map(time -> names(time.getValue(), phrases) + " " + time.getKey().orElse(""))
        .collect(Collectors.joining(", "));
  }
}
