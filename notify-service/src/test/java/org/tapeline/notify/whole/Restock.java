package org.tapeline.notify.whole;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;

/** A restock request for the field NORTH, as inventory publishes it. */
final class Restock {
  final UUID request = UuidV7.next();
  private final String from;
  private final String item;
  private final Instant expectedAt;

  /** A request for a jaw pad. */
  Restock(String from, String expectedAt) {
    this(from, "jaw-pad-15mm", expectedAt);
  }

  /**
   * @param from the place that it comes from
   */
  Restock(String from, String item, String expectedAt) {
    this.from = from;
    this.item = item;
    this.expectedAt = Instant.parse(expectedAt);
  }

  Event requested(long version, int pieces) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("request", request);
    data.put("kind", "transfer");
    data.put("place", "NORTH");
    data.put("fromPlace", from);
    data.put("item", item);
    data.put("quantity", pieces);
    data.put("causes", List.of());
    data.put("expectedAt", expectedAt);
    data.put("at", Instant.now());
    return event("requested", version, data);
  }

  Event picked(long version, int pieces) {
    return event(
        "picked",
        version,
        Map.of(
            "request",
            request,
            "place",
            "NORTH",
            "quantity",
            pieces,
            "by",
            "depot",
            "at",
            Instant.now()));
  }

  Event cancelled(long version) {
    return event(
        "cancelled",
        version,
        Map.of(
            "request",
            request,
            "place",
            "NORTH",
            "why",
            "not-available",
            "by",
            "depot",
            "at",
            Instant.now()));
  }

  /** All with one key, so that they are heard in their order, those of other requests too. */
  private Event event(String what, long version, Map<String, Object> data) {
    return Event.of(
        "inventory.events",
        "org.tapeline.inventory.restock-" + what + ".v1",
        "restock-" + request,
        version,
        "NORTH",
        data);
  }
}
