package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.helmet.AssetTag;
import org.tapeline.inventory.helmet.HelmetCommand;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.inventory.helmet.HelmetTags;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.inventory.restock.RestockEvent.RestockCancelled;
import org.tapeline.inventory.restock.RestockEvent.RestockPicked;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.inventory.restock.RestockEvent.RestockShipped;
import org.tapeline.inventory.restock.RestockWatch.Waits;
import org.tapeline.inventory.stock.StockDesk;
import org.tapeline.journal.Cause;
import org.tapeline.journal.quarkus.http.Problem;

/** What the warehouse does with a request; always in the caller's transaction. */
@ApplicationScoped
public class RestockWork {
  private final RestockDesk desk;
  private final RestockStore store;
  private final RestockPolicy policy;
  private final RestockWatch watch;
  private final HelmetDesk helmets;
  private final HelmetTags tags;
  private final StockDesk stock;
  private final Places places;
  private final Clock clock;

  RestockWork(
      RestockDesk desk,
      RestockStore store,
      RestockPolicy policy,
      RestockWatch watch,
      HelmetDesk helmets,
      HelmetTags tags,
      StockDesk stock,
      Places places,
      Clock clock) {
    this.desk = desk;
    this.store = store;
    this.policy = policy;
    this.watch = watch;
    this.helmets = helmets;
    this.tags = tags;
    this.stock = stock;
    this.places = places;
    this.clock = clock;
  }

  /**
   * What came.
   *
   * @param quantity good pieces; empty for all that was asked for and is not damaged; a transfer of
   *     which nothing came did not arrive
   * @param damaged pieces that cannot be used
   * @param tags tags on the helmets that came; those without one get one
   * @param lot as printed on helmets from outside, and when they were made, where it is stated
   */
  public record Receipt(
      Optional<Integer> quantity,
      Optional<Integer> damaged,
      Optional<List<String>> tags,
      Optional<String> lot,
      Optional<LocalDate> manufacturedOn,
      Optional<LocalDate> certifiedUntil) {

    static Receipt of(int good, int damaged) {
      return of(Optional.of(good), Optional.of(damaged));
    }

    static Receipt of(Optional<Integer> good, Optional<Integer> damaged) {
      return new Receipt(
          good, damaged, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
  }

  Restock pick(UUID request, String by, Cause cause) {
    Restock r = step(request, State.PICKED, Optional.empty());
    desk.append(r, new RestockPicked(request, r.place(), r.quantity(), by, clock.instant()), cause);
    return r;
  }

  /** What is sent today is there the next morning; a later day that was promised stands. */
  Restock ship(UUID request, String by, Cause cause) {
    Instant next = policy.travelled(clock.instant(), places.zone(store.locked(request).place()));
    Restock r = step(request, State.SHIPPED, Optional.of(next));
    desk.append(
        r,
        new RestockShipped(request, r.place(), r.quantity(), by, clock.instant(), r.expectedAt()),
        cause);
    return r;
  }

  Restock cancel(UUID request, String why, String by, Cause cause) {
    Restock asked = desk.held(request);
    List<Waits> causes = store.causes(request);
    if (why.equals("not-needed") && asked.allows(State.CANCELLED)) {
      refuseWhileNeeded(watch.waiting(asked, causes));
    }
    Restock r = step(request, State.CANCELLED, Optional.empty());
    desk.append(r, new RestockCancelled(request, r.place(), why, by, clock.instant()), cause);
    watch.cancelled(r, causes, cause);
    return r;
  }

  private static void refuseWhileNeeded(long waiting) {
    if (waiting > 0) {
      throw Problem.conflict(
          "still-needed",
          (waiting == 1 ? "1 re-fit case waits" : waiting + " re-fit cases wait")
              + " for this. Cancel it as not-available or as a mistake, and something else is"
              + " looked for or asked for again.");
    }
  }

  Restock receive(UUID request, Receipt receipt, String by, Cause cause) {
    Restock asked = desk.held(request);
    int damaged = receipt.damaged().orElse(0);
    int good = receipt.quantity().orElse(Math.max(0, asked.quantity() - damaged));
    checkReceipt(asked, good, damaged);
    Restock r = step(request, State.RECEIVED, Optional.empty());
    List<String> came = tagsOf(asked, receipt, good);
    int missing = Math.max(0, asked.quantity() - good - damaged);
    desk.append(
        r,
        new RestockReceived(request, r.place(), good, missing, damaged, came, by, clock.instant()),
        cause);
    List<Waits> causes = store.causes(request);
    if (r.betweenPlaces()) {
      arriveByTransfer(r, good, damaged, by, cause);
    } else if (r.ofHelmet()) {
      came.forEach(tag -> helmets.run(tag, fromOutside(r, receipt), cause.step("arrive-" + tag)));
    } else if (good > 0) {
      stock.receive(r.place(), r.item(), "", good, cause);
    }
    if (good + damaged == 0) {
      watch.cancelled(r, causes, cause);
    } else {
      watch.arrived(r, causes, good > 0, cause);
    }
    return r;
  }

  private static void checkReceipt(Restock asked, int good, int damaged) {
    if (good < 0 || damaged < 0 || good > 1000 || damaged > 1000) {
      throw Problem.badRequest("quantity", "Give pieces from 0 to 1000.");
    }
    if (good + damaged == 0 && !asked.betweenPlaces()) {
      throw Problem.badRequest(
          "nothing-came", "Nothing came. Cancel the request if nothing will come.");
    }
    if (asked.betweenPlaces() && good + damaged > asked.quantity()) {
      throw Problem.badRequest("quantity", "No more can come than was sent: " + asked.quantity());
    }
  }

  private List<String> tagsOf(Restock asked, Receipt receipt, int good) {
    if (!asked.ofHelmet()) {
      return List.of();
    }
    if (asked.betweenPlaces()) {
      return good > 0 ? List.of(asked.tag().orElseThrow()) : List.of();
    }
    List<String> came = new ArrayList<>(receipt.tags().orElse(List.of()));
    if (came.size() > good) {
      throw Problem.badRequest("tags", "There are more tags than good helmets.");
    }
    came.forEach(RestockWork::checkTag);
    while (came.size() < good) {
      came.add(tags.next().value());
    }
    return came;
  }

  private static void checkTag(String tag) {
    try {
      new AssetTag(tag);
    } catch (IllegalArgumentException e) {
      throw Problem.badRequest(
          "tags",
          "The tag " + tag + " is wrong. " + e.getMessage(),
          new Problem.FieldError("tags", e.getMessage()));
    }
  }

  private HelmetCommand.Receive fromOutside(Restock r, Receipt receipt) {
    Instant now = clock.instant();
    return new HelmetCommand.Receive(
        r.model().orElseThrow(),
        r.size().orElseThrow(),
        receipt.lot().orElse("not-stated"),
        receipt.manufacturedOn().orElse(LocalDate.ofInstant(now, places.zone(r.place()))),
        receipt.certifiedUntil(),
        r.place(),
        now);
  }

  private void arriveByTransfer(Restock r, int good, int damaged, String by, Cause cause) {
    if (r.ofHelmet() && good + damaged > 0) {
      helmetArrives(r, damaged > 0, by, cause);
    }
    if (!r.ofHelmet() && good > 0) {
      stock.transfer(r.fromPlace().orElseThrow(), r.place(), r.item(), good, cause);
    }
    if (!r.ofHelmet() && damaged > 0) {
      stock.writeOff(r.fromPlace().orElseThrow(), r.item(), damaged, cause);
    }
  }

  private void helmetArrives(Restock r, boolean damaged, String by, Cause cause) {
    Instant now = clock.instant();
    String tag = r.tag().orElseThrow();
    helmets.run(tag, new HelmetCommand.Move(r.place(), now), cause.step("arrive-" + tag));
    if (damaged) {
      helmets.run(
          tag,
          new HelmetCommand.ReportDamage(r.request(), "other", "transport", true, by, now),
          cause.step("damaged-" + tag));
    }
  }

  private Restock step(UUID request, State next, Optional<Instant> notBefore) {
    Restock r = store.locked(request);
    if (!r.allows(next)) {
      throw Problem.conflict(
          "restock-" + r.says(),
          "The request is " + r.says() + " already and cannot be " + next.code() + ".");
    }
    Instant expected = notBefore.filter(at -> at.isAfter(r.expectedAt())).orElse(r.expectedAt());
    Restock changed = RestockDesk.changed(r, r.quantity(), next, expected);
    store.save(changed, clock.instant());
    return changed;
  }
}
