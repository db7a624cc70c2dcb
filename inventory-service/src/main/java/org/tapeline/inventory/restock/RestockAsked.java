package org.tapeline.inventory.restock;

import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.restock.RestockEvent.RestockReceived;
import org.tapeline.inventory.restock.RestockEvent.RestockRequested;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/**
 * What was asked for, of a receipt: the receipt does not say it again.
 *
 * @param fromPlace empty when it came from outside
 */
public record RestockAsked(String item, Optional<String> fromPlace) {

  /** As the request's stream says it last before the receipt. */
  public static RestockAsked of(Journal journal, RestockReceived received) {
    UUID request = received.request();
    RestockRequested asked =
        journal.load(StreamName.of("restock", request, received.place())).stream()
            .map(RecordedEvent::data)
            .filter(RestockRequested.class::isInstance)
            .map(RestockRequested.class::cast)
            .reduce((first, second) -> second)
            .orElseThrow(() -> new IllegalStateException(request + " was never asked for"));
    return new RestockAsked(asked.item(), asked.fromPlace());
  }

  public boolean ofHelmet() {
    return item.startsWith("helmet:");
  }
}
