package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.DerivedId;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.restock.RestockOpen;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.TradeWords;
import org.tapeline.notify.words.Words;

/** What a depot is told of restock requests: one by its own words, several as lists. */
@ApplicationScoped
class DepotLetters {
  private static final String LINK = "link.restock";
  private static final String PAGE = "/inventory/restock";

  private final Staff staff;
  private final Places places;
  private final Words words;
  private final CauseTable table;

  DepotLetters(Staff staff, Places places, Words words, CauseTable table) {
    this.staff = staff;
    this.places = places;
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
        news.kind(), isNew ? news.request() : cause, depot, facts(news.open(), phrases), List.of());
  }

  private StaffNoticeWriter.Draft several(
      String depot, List<DepotNews> news, UUID cause, Instant now, Phrases phrases) {
    ZoneId zone = staff.placeOf(depot).flatMap(places::knownZoneOf).orElse(staff.zone());
    List<Letter.Section> lists = new ArrayList<>();
    list("list.asked", NoticeKind.RESTOCK_REQUEST, news, zone, phrases).ifPresent(lists::add);
    list("list.changed", NoticeKind.RESTOCK_CHANGED, news, zone, phrases).ifPresent(lists::add);
    Facts facts =
        Facts.none()
            .with("quantity", Integer.toString(news.size()))
            .with("date", Moments.date(now, zone, phrases.language()))
            .with("time", Moments.time(now, zone, phrases.language()));
    UUID about = DerivedId.from(cause, "restock-several/" + news.size());
    return draft(NoticeKind.RESTOCK_SEVERAL, about, depot, facts, lists);
  }

  private StaffNoticeWriter.Draft draft(
      NoticeKind kind, UUID about, String depot, Facts facts, List<Letter.Section> lists) {
    Urgency urgency = table.of(CauseName.RESTOCK_ASKED).urgencyIn(Urgency.NORMAL);
    return new StaffNoticeWriter.Draft(
        kind, about, depot, urgency, facts, LINK, PAGE, List.of(), Optional.empty(), lists);
  }

  private Optional<Letter.Section> list(
      String heading, NoticeKind kind, List<DepotNews> news, ZoneId zone, Phrases phrases) {
    List<RestockOpen> of =
        news.stream().filter(n -> n.kind() == kind).map(DepotNews::open).toList();
    return phrases.list(heading, of, open -> line(open, zone, phrases));
  }

  private String line(RestockOpen open, ZoneId zone, Phrases phrases) {
    return phrases.of(
        "list.restock",
        amount(open, phrases)
            .with("expected", Moments.date(open.expectedAt, zone, phrases.language())));
  }

  private Facts amount(RestockOpen open, Phrases phrases) {
    return Facts.none()
        .with("to", places.nameOf(open.place))
        .with("quantity", Integer.toString(open.quantity))
        .with("item", TradeWords.item(open.item, phrases));
  }

  private Facts facts(RestockOpen open, Phrases phrases) {
    ZoneId zone = places.zoneOf(open.place);
    String expected =
        Moments.date(open.expectedAt, zone, phrases.language())
            + ", "
            + Moments.time(open.expectedAt, zone, phrases.language());
    return amount(open, phrases).with("expected", expected).with("source", source(open, phrases));
  }

  private String source(RestockOpen open, Phrases phrases) {
    return open.fromPlace == null
        ? phrases.of("source.none")
        : phrases.of("source.from", Facts.none().with("from", places.nameOf(open.fromPlace)));
  }
}
