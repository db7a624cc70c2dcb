package org.tapeline.fitting.part;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** Copies what inventory says of the parts at the fields. */
@ApplicationScoped
public class PartEvents {
  private static final String PLACE = "place:";

  record StockCounted(String place, String item, Optional<String> model, int counted, Instant at) {}

  record PartUsed(String place, String item, int quantity) {}

  record PartMoved(String item, int quantity, String from, String to, Instant at) {}

  record RestockRequested(UUID request, String item) {}

  record RestockReceived(UUID request, String place, int quantity, Instant at) {}

  public void declareOn(Subscription on) {
    String of = "org.tapeline.inventory.";
    on.on(of + "stock-counted.v1", StockCounted.class, (d, e) -> counted(d))
        .on(of + "part-used.v1", PartUsed.class, PartEvents::used)
        .on(of + "part-moved.v1", PartMoved.class, PartEvents::moved)
        .on(of + "restock-requested.v1", RestockRequested.class, (d, e) -> requested(d))
        .on(of + "restock-received.v1", RestockReceived.class, PartEvents::received);
  }

  private static void counted(StockCounted d) {
    PartCount.keep(d.place(), d.item(), d.model().orElse(""), d.counted(), d.at());
  }

  private static void used(PartUsed d, ReceivedEvent event) {
    PartMove.keep(event.id(), d.place(), d.item(), -d.quantity(), event.time());
  }

  /** A move between two places is one event: what came has an id of its own. */
  private static void moved(PartMoved d, ReceivedEvent event) {
    at(d.from())
        .ifPresent(from -> PartMove.keep(event.id(), from, d.item(), -d.quantity(), d.at()));
    UUID cameId = DerivedId.from(event.id(), "came");
    at(d.to()).ifPresent(to -> PartMove.keep(cameId, to, d.item(), d.quantity(), d.at()));
  }

  private static Optional<String> at(String account) {
    return account.startsWith(PLACE)
        ? Optional.of(account.substring(PLACE.length()))
        : Optional.empty();
  }

  private static void requested(RestockRequested d) {
    PartRequested.keep(d.request(), d.item());
  }

  /** Request and receipt are one stream: what was asked for is known. */
  private static void received(RestockReceived d, ReceivedEvent event) {
    PartRequested.item(d.request())
        .ifPresent(item -> PartMove.keep(event.id(), d.place(), item, d.quantity(), d.at()));
  }
}
