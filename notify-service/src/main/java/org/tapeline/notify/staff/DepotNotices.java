package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.restock.RestockCopies;
import org.tapeline.notify.restock.RestockOpen;

/**
 * Tells a depot of restock requests. What is heard waits a short while for others, and is told as
 * it stands then: what was cancelled, or is as it was told before, is not told.
 */
@ApplicationScoped
public class DepotNotices {
  private final DepotMatters matters;
  private final DepotLetters letters;
  private final StaffNoticeWriter writer;
  private final Staff staff;
  private final RestockCopies copies;
  private final CauseTable table;
  private final Duration windowAtMost;
  private final Clock clock;

  DepotNotices(
      DepotMatters matters,
      DepotLetters letters,
      StaffNoticeWriter writer,
      Staff staff,
      RestockCopies copies,
      CauseTable table,
      @ConfigProperty(name = "tapeline.causes.window-at-most") Duration windowAtMost,
      Clock clock) {
    this.matters = matters;
    this.letters = letters;
    this.writer = writer;
    this.staff = staff;
    this.copies = copies;
    this.table = table;
    this.windowAtMost = windowAtMost;
    this.clock = clock;
  }

  public Subscription declareOn(Subscription subscription) {
    return subscription.on(
        "org.tapeline.inventory.restock-requested.v1", RestockRequested.class, this::on);
  }

  /** Whether there is news is found out when it is told: the depot may be told at this moment. */
  private void on(RestockRequested requested, ReceivedEvent event) {
    RestockOpen open = copy(requested);
    CauseName cause =
        RestockTold.findById(open.request) == null
            ? CauseName.RESTOCK_ASKED
            : CauseName.RESTOCK_CHANGED;
    matters.add(
        new DepotMatters.Matter(
            open.request,
            staff.depot(open.servedFrom()),
            event.id(),
            event.correlationId(),
            clock.instant().plus(table.window(cause, windowAtMost))));
    copies.requested(open);
  }

  @Transactional
  List<String> due(Instant now) {
    return matters.due(now);
  }

  /** Tells a depot of all that waits for it, in one notice. */
  @Transactional
  void tell(String depot, Instant now) {
    List<DepotMatters.Matter> taken = matters.take(depot);
    List<UUID> requests = taken.stream().map(DepotMatters.Matter::request).toList();
    Map<UUID, Integer> told = RestockTold.quantities(requests);
    List<DepotNews> news =
        RestockOpen.of(requests).stream()
            .flatMap(open -> news(open, told.get(open.request)).stream())
            .sorted(Comparator.comparing(DepotNews::expectedAt).thenComparing(DepotNews::request))
            .toList();
    if (news.isEmpty()) {
      return;
    }
    var heard =
        taken.stream().collect(Collectors.toMap(DepotMatters.Matter::request, Function.identity()));
    List<UUID> causes = news.stream().map(n -> heard.get(n.request()).event()).toList();
    DepotMatters.Matter first = heard.get(news.getFirst().request());
    writer.raise(
        letters.of(depot, news, causes.getFirst(), now),
        causes,
        new Cause(first.event(), first.correlation(), "notice"));
    matters.told(news);
  }

  private Optional<DepotNews> news(RestockOpen open, Integer told) {
    OptionalInt before = told == null ? OptionalInt.empty() : OptionalInt.of(told);
    return WhenRestockRequestedThenTellDepot.react(before, open.quantity)
        .map(kind -> new DepotNews(kind, open))
        .filter(news -> table.tells(news.cause(), CauseName.Recipient.DEPOT));
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
}
