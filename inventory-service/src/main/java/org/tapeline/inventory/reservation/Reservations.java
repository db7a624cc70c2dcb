package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.reservation.Cases.Open;
import org.tapeline.inventory.reservation.ReservationEvent.ReplacementMissing;
import org.tapeline.inventory.reservation.ReservationEvent.ReplacementReserved;
import org.tapeline.inventory.reservation.ReservationEvent.ReservationReleased;
import org.tapeline.inventory.reservation.ReservationStore.Kept;
import org.tapeline.inventory.reservation.Search.Found;
import org.tapeline.inventory.restock.Restock;
import org.tapeline.inventory.restock.RestockDesk;
import org.tapeline.inventory.restock.RestockDesk.Wanted;
import org.tapeline.inventory.restock.RestockPolicy;
import org.tapeline.inventory.restock.RestockWatch.Waits;
import org.tapeline.inventory.restock.WhenStockIsLowThenRequest;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.UuidV7;

/** Keeps replacements for re-fit cases, or has them brought; in the caller's transaction. */
@ApplicationScoped
public class Reservations {
  private final Cases cases;
  private final Search search;
  private final PlannedHelmets planned;
  private final ReservationStore store;
  private final RestockDesk restock;
  private final RestockPolicy policy;
  private final WhenStockIsLowThenRequest low;
  private final Places places;
  private final Journal journal;
  private final Clock clock;
  private final Duration keptFor;

  Reservations(
      Cases cases,
      Search search,
      PlannedHelmets planned,
      ReservationStore store,
      RestockDesk restock,
      RestockPolicy policy,
      WhenStockIsLowThenRequest low,
      Places places,
      Journal journal,
      Clock clock,
      @ConfigProperty(name = "tapeline.reservation.kept-for") Duration keptFor) {
    this.cases = cases;
    this.search = search;
    this.planned = planned;
    this.store = store;
    this.restock = restock;
    this.policy = policy;
    this.low = low;
    this.places = places;
    this.journal = journal;
    this.clock = clock;
    this.keptFor = keptFor;
  }

  /** For each thing that the case waits for: the best one there is, else a request. */
  public void reserveOrRequest(UUID refitCase, String not, Cause cause) {
    List<Open> missing = new ArrayList<>();
    for (Open open : cases.waitingOf(refitCase)) {
      if (!reserve(open, not, cause)) {
        missing.add(open);
      }
    }
    if (!missing.isEmpty()) {
      request(missing, cause);
    }
  }

  private void request(List<Open> missing, Cause cause) {
    Open first = missing.getFirst();
    List<Restock> requests =
        missing.stream().map(m -> restock.request(wanted(m, m.need()), cause)).toList();
    Instant expected =
        requests.stream().map(Restock::expectedAt).max(Comparator.naturalOrder()).orElseThrow();
    append(
        new ReplacementMissing(
            first.refitCase(),
            first.player(),
            missing.stream().map(Open::need).toList(),
            first.field(),
            requests.stream().map(Restock::request).distinct().toList(),
            expected),
        cause.step("missing-" + first.need().key()));
  }

  /** What waits is what the case needs; what is brought may be of another model or size. */
  private static Wanted wanted(Open open, Need what) {
    Optional<String> model = what.ofHelmet() ? what.model() : Optional.empty();
    Optional<String> size = what.ofHelmet() ? what.size() : Optional.empty();
    return new Wanted(
        open.field(), what.key(), model, size, new Waits(open.refitCase(), open.need().key()));
  }

  /** Gives the case what is planned for its player, or the best helmet there is. */
  public void serveHelmets(UUID refitCase, Cause cause) {
    serve(
        cases.waitingOf(refitCase).stream().filter(open -> open.need().ofHelmet()).toList(), cause);
  }

  /** Serves who waits for it, as far as there is something: the urgent first, then the oldest. */
  public void serve(String needKey, Cause cause) {
    serve(cases.waitingFor(needKey), cause);
  }

  private void serve(List<Open> waiting, Cause cause) {
    for (Open open : waiting) {
      if (!reserve(open, "", cause)) {
        return;
      }
    }
  }

  private boolean reserve(Open open, String not, Cause cause) {
    Instant now = clock.instant();
    ZoneId zone = places.zone(open.field());
    LocalDate today = LocalDate.ofInstant(now, zone);
    Optional<Found> best =
        planned
            .take(open, today, not)
            .or(() -> search.best(open.need(), open.refitCase(), open.field(), today, not));
    best.ifPresent(found -> keep(open, found, now, zone, cause));
    return best.isPresent();
  }

  private void keep(Open open, Found found, Instant now, ZoneId zone, Cause cause) {
    String key = open.need().key();
    boolean here = found.place().equals(open.field());
    Instant readyAt = here ? now : policy.travelled(now, zone);
    Instant expiresAt = readyAt.plus(keptFor);
    store.insert(UuidV7.next(), open, found, readyAt, expiresAt);
    cases.mark(open.refitCase(), key, "reserved");
    restock.forget(new Waits(open.refitCase(), key), "not-needed", cause);
    append(
        new ReplacementReserved(
            open.refitCase(),
            open.player(),
            open.need(),
            found.tag(),
            found.item(),
            found.place(),
            open.field(),
            readyAt,
            expiresAt),
        cause.step("reserve-" + key));
    low.lowered(found.place(), key, cause);
    if (!here) {
      Need what = found.tag().map(planned::kindOf).orElse(open.need());
      restock.transfer(wanted(open, what), found.place(), found.tag(), readyAt, cause);
    }
  }

  /** What is kept is no longer kept; the case waits again while it is open. */
  public void release(Kept kept, String why, Cause cause) {
    store.end(kept, "released");
    cases
        .find(kept.refitCase(), kept.needKey())
        .ifPresent(open -> cases.mark(kept.refitCase(), kept.needKey(), "waiting"));
    restock.forget(new Waits(kept.refitCase(), kept.needKey()), "reservation-released", cause);
    append(
        new ReservationReleased(kept.refitCase(), kept.player(), kept.tag(), kept.item(), why),
        cause.step("release-" + kept.needKey()));
  }

  /** The player has what was kept. */
  public void fulfil(Kept kept, Cause cause) {
    store.end(kept, "fulfilled");
    cases.mark(kept.refitCase(), kept.needKey(), "done");
    restock.forget(new Waits(kept.refitCase(), kept.needKey()), "not-needed", cause);
  }

  /** The case is over: what was kept for it is free for others, what was asked for is dropped. */
  public void close(UUID refitCase, boolean fitted, Cause cause) {
    cases.close(refitCase);
    List<Kept> kept = store.liveOf(refitCase);
    kept.forEach(k -> release(k, fitted && k.item().isPresent() ? "fitted" : "case-closed", cause));
    cases
        .keysOf(refitCase)
        .forEach(key -> restock.forget(new Waits(refitCase, key), "not-needed", cause));
    kept.forEach(k -> serve(k.needKey(), cause));
  }

  /**
   * What has been kept for too long goes to the next who waits, however urgent its own case is:
   * that goes to the end, and gets what is left or has it requested.
   */
  public void expire(Cause cause) {
    Instant now = clock.instant();
    for (Kept kept : store.expired(now)) {
      Cause step = new Cause(kept.id(), cause.correlationId(), "expired");
      release(kept, "expired", step);
      cases.waitFrom(kept.refitCase(), kept.needKey(), now);
      serve(others(kept), step);
      reserveOrRequest(kept.refitCase(), "", step);
    }
  }

  private List<Open> others(Kept kept) {
    return cases.waitingFor(kept.needKey()).stream()
        .filter(open -> !open.refitCase().equals(kept.refitCase()))
        .toList();
  }

  private void append(ReservationEvent event, Cause cause) {
    StreamName stream = StreamName.of("reservation", event.refitCase(), event.player());
    long version = journal.version(stream);
    journal.append(stream, version, List.of((Record) event), cause);
  }
}
