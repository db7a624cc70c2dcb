package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.inventory.helmet.AssetTag;
import org.tapeline.inventory.helmet.HelmetCommand;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.inventory.helmet.HelmetTags;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Receipt.Came;
import org.tapeline.inventory.stock.StockDesk;
import org.tapeline.journal.Cause;
import org.tapeline.journal.quarkus.http.Problem;

/** Puts what came into the books; always in the caller's transaction. */
@ApplicationScoped
public class Arrival {
  private final HelmetDesk helmets;
  private final HelmetTags tags;
  private final StockDesk stock;
  private final Places places;
  private final Clock clock;

  Arrival(HelmetDesk helmets, HelmetTags tags, StockDesk stock, Places places, Clock clock) {
    this.helmets = helmets;
    this.tags = tags;
    this.stock = stock;
    this.places = places;
    this.clock = clock;
  }

  /** The tags of the good helmets that came; new ones where they have none. */
  List<String> tagsOf(Restock asked, Receipt receipt, int good) {
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
    came.forEach(Arrival::checkTag);
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

  /**
   * @param by staff id of who received it
   */
  void book(Restock r, Receipt receipt, Came came, List<String> tagged, String by, Cause cause) {
    if (r.betweenPlaces() && r.ofHelmet()) {
      if (!came.nothing()) {
        helmetArrives(r, came.damaged() > 0, by, cause);
      }
    } else if (r.betweenPlaces()) {
      partsArrive(r, came, cause);
    } else if (r.ofHelmet()) {
      tagged.forEach(tag -> helmets.run(tag, fromOutside(r, receipt), cause.step("arrive-" + tag)));
    } else if (came.good() > 0) {
      stock.receive(r.place(), r.item(), "", came.good(), cause);
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

  private void partsArrive(Restock r, Came came, Cause cause) {
    String from = r.fromPlace().orElseThrow();
    if (came.good() > 0) {
      stock.transfer(from, r.place(), r.item(), came.good(), cause);
    }
    if (came.damaged() > 0) {
      stock.writeOff(from, r.item(), came.damaged(), cause);
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
}
