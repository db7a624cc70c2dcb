package org.tapeline.notify.whole;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;

/** A re-fit case, as fitting publishes it. */
final class Refit {
  final UUID id = UuidV7.next();
  final UUID correlationId = UuidV7.next();
  private final UUID player;
  private final String field;

  Refit(UUID player) {
    this(player, "NORTH");
  }

  Refit(UUID player, String field) {
    this.player = player;
    this.field = field;
  }

  Event opened(long version) {
    return opened(version, "do-not-wear");
  }

  Event opened(long version, String urgency) {
    return event(
        "refit-opened",
        version,
        Map.of(
            "refitCase",
            id,
            "player",
            player,
            "field",
            field,
            "team",
            "U10-HAWKS",
            "urgency",
            urgency,
            "why",
            "fit-failed",
            "needs",
            List.of(Map.of("kind", "part", "item", "jaw-pad-15mm")),
            "at",
            Instant.now()));
  }

  /** Twenty minutes from a time on. */
  Event booked(long version, String startsAt) {
    return event("refit-booked", version, booking(startsAt));
  }

  /** As {@link #booked}, by a guardian with the link of that notice. */
  Event chosen(long version, String startsAt, UUID notice) {
    Map<String, Object> booking = new HashMap<>(booking(startsAt));
    booking.put("chosenWith", notice);
    return event("refit-booked", version, booking);
  }

  private Map<String, Object> booking(String startsAt) {
    Instant starts = Instant.parse(startsAt);
    return Map.of(
        "refitCase",
        id,
        "player",
        player,
        "field",
        field,
        "fitDay",
        UuidV7.next(),
        "startsAt",
        starts,
        "endsAt",
        starts.plusSeconds(1200),
        "zone",
        "America/Denver",
        "waitsForArrival",
        false,
        "at",
        Instant.now());
  }

  /** The fit day does not take place, and there is no other. */
  Event unbooked(long version) {
    return event(
        "refit-unbooked",
        version,
        Map.of(
            "refitCase",
            id,
            "player",
            player,
            "fitDay",
            UuidV7.next(),
            "why",
            "cancelled",
            "at",
            Instant.now()));
  }

  Event closed(long version, String outcome) {
    return event(
        "refit-closed",
        version,
        Map.of("refitCase", id, "player", player, "outcome", outcome, "at", Instant.now()));
  }

  private Event event(String name, long version, Object data) {
    return Event.of(
        "fitting.events",
        "org.tapeline.fitting." + name + ".v1",
        "refit-" + id,
        version,
        player,
        data);
  }
}
