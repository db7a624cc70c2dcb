package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.OptionalInt;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.restock.RestockCopies;
import org.tapeline.notify.restock.RestockOpen;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.TradeWords;
import org.tapeline.notify.words.Words;

/** Tells a depot of restock requests. */
@ApplicationScoped
public class DepotNotices {
  private final StaffNoticeWriter writer;
  private final Staff staff;
  private final Places places;
  private final Words words;
  private final RestockCopies copies;
  private final CauseTable table;

  DepotNotices(
      StaffNoticeWriter writer,
      Staff staff,
      Places places,
      Words words,
      CauseTable table,
      RestockCopies copies) {
    this.writer = writer;
    this.staff = staff;
    this.places = places;
    this.words = words;
    this.copies = copies;
    this.table = table;
  }

  public Subscription declareOn(Subscription subscription) {
    return subscription.on(
        "org.tapeline.inventory.restock-requested.v1", RestockRequested.class, this::on);
  }

  private void on(RestockRequested requested, ReceivedEvent event) {
    RestockTold told = RestockTold.findById(requested.request());
    OptionalInt before = told == null ? OptionalInt.empty() : OptionalInt.of(told.quantity);
    WhenRestockRequestedThenTellDepot.react(before, requested.quantity())
        .ifPresent(kind -> tell(kind, requested, event));
    if (told == null) {
      told = new RestockTold();
      told.request = requested.request();
    }
    told.quantity = requested.quantity();
    told.persist();
    copies.requested(copy(requested));
  }

  static RestockOpen copy(RestockRequested requested) {
    RestockOpen open = new RestockOpen();
    open.request = requested.request();
    open.place = requested.place();
    open.fromPlace = requested.fromPlace().orElse(null);
    open.item = requested.item();
    open.quantity = requested.quantity();
    open.expectedAt = requested.expectedAt();
    open.requestedAt = requested.at();
    return open;
  }

  private void tell(NoticeKind kind, RestockRequested requested, ReceivedEvent event) {
    CauseName cause =
        kind == NoticeKind.RESTOCK_REQUEST ? CauseName.RESTOCK_ASKED : CauseName.RESTOCK_CHANGED;
    if (!table.tells(cause, CauseName.Recipient.DEPOT)) {
      return;
    }
    UUID about = kind == NoticeKind.RESTOCK_REQUEST ? requested.request() : event.id();
    String depot = staff.depot(requested.fromPlace().orElse(requested.place()));
    writer.raise(
        new StaffNoticeWriter.Draft(
            kind,
            about,
            depot,
            table.of(cause).urgencyIn(Urgency.NORMAL),
            facts(requested, staff.languageOf(depot)),
            "link.restock",
            "/inventory/restock"),
        event);
  }

  private Facts facts(RestockRequested requested, Language language) {
    Phrases phrases = words.phrases(language);
    ZoneId zone = places.zoneOf(requested.place());
    String expected =
        Moments.date(requested.expectedAt(), zone, language)
            + ", "
            + Moments.time(requested.expectedAt(), zone, language);
    return Facts.none()
        .with("to", places.nameOf(requested.place()))
        .with("quantity", Integer.toString(requested.quantity()))
        .with("item", TradeWords.item(requested.item(), phrases))
        .with("expected", expected)
        .with("source", source(requested, phrases));
  }

  private String source(RestockRequested requested, Phrases phrases) {
    return requested
        .fromPlace()
        .map(from -> phrases.of("source.from", Facts.none().with("from", places.nameOf(from))))
        .orElseGet(() -> phrases.of("source.none"));
  }
}
