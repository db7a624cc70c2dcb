package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.DerivedId;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.restock.RestockOpen;
import org.tapeline.notify.restock.RestockWords;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** What a depot is told of restock requests: one by its own words, several as lists. */
@ApplicationScoped
class DepotLetters {
  private static final String LINK = "link.restock";
  private static final String PAGE = "/inventory/restock";

  private final Staff staff;
  private final StaffZones zones;
  private final Places places;
  private final RestockWords restock;
  private final Words words;
  private final CauseTable table;

  DepotLetters(
      Staff staff,
      StaffZones zones,
      Places places,
      RestockWords restock,
      Words words,
      CauseTable table) {
    this.staff = staff;
    this.zones = zones;
    this.places = places;
    this.restock = restock;
    this.words = words;
    this.table = table;
  }

  /**
   * @param news one or more, what is expected first, first
   * @param cause the event of the first
   */
  StaffNoticeWriter.Draft of(String depot, List<DepotNews> news, UUID cause, Instant now) {
    Phrases phrases = words.phrases(staff.languageOf(depot));
    return news.size() == 1
        ? one(depot, news.getFirst(), cause, phrases)
        : several(depot, news, cause, now, phrases);
  }

  private StaffNoticeWriter.Draft one(String depot, DepotNews news, UUID cause, Phrases phrases) {
    boolean isNew = news.kind() == NoticeKind.RESTOCK_REQUEST;
    return draft(
        news.kind(),
        isNew ? news.request() : cause,
        depot,
        urgency(List.of(news)),
        facts(news.open(), phrases),
        List.of());
  }

  private StaffNoticeWriter.Draft several(
      String depot, List<DepotNews> news, UUID cause, Instant now, Phrases phrases) {
    ZoneId zone = zones.of(depot);
    List<Letter.Section> lists = new ArrayList<>();
    list("list.asked", NoticeKind.RESTOCK_REQUEST, news, zone, phrases).ifPresent(lists::add);
    list("list.changed", NoticeKind.RESTOCK_CHANGED, news, zone, phrases).ifPresent(lists::add);
    Facts facts =
        Facts.none()
            .with("quantity", Integer.toString(news.size()))
            .with("date", Moments.date(now, zone, phrases.language()))
            .with("time", Moments.time(now, zone, phrases.language()));
    UUID about = DerivedId.from(cause, "restock-several/" + news.size());
    return draft(NoticeKind.RESTOCK_SEVERAL, about, depot, urgency(news), facts, lists);
  }

  private static StaffNoticeWriter.Draft draft(
      NoticeKind kind,
      UUID about,
      String depot,
      Urgency urgency,
      Facts facts,
      List<Letter.Section> lists) {
    return new StaffNoticeWriter.Draft(
        kind, about, depot, urgency, facts, LINK, PAGE, List.of(), Optional.empty(), lists);
  }

  /** That of the most urgent. */
  private Urgency urgency(List<DepotNews> news) {
    return news.stream()
        .map(n -> table.of(n.cause()).urgencyIn(Urgency.NORMAL))
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  private Optional<Letter.Section> list(
      String heading, NoticeKind kind, List<DepotNews> news, ZoneId zone, Phrases phrases) {
    List<RestockOpen> of =
        news.stream().filter(n -> n.kind() == kind).map(DepotNews::open).toList();
    return phrases.list(heading, of, open -> restock.line(open, zone, phrases));
  }

  private Facts facts(RestockOpen open, Phrases phrases) {
    ZoneId zone = places.zoneOf(open.place);
    String expected =
        Moments.date(open.expectedAt, zone, phrases.language())
            + ", "
            + Moments.time(open.expectedAt, zone, phrases.language());
    return restock
        .asked(open, phrases)
        .with("expected", expected)
        .with("source", source(open, phrases));
  }

  private String source(RestockOpen open, Phrases phrases) {
    return open.fromPlace == null
        ? phrases.of("source.none")
        : phrases.of("source.from", Facts.none().with("from", places.nameOf(open.fromPlace)));
  }
}
