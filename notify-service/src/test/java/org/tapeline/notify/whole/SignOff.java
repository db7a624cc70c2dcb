package org.tapeline.notify.whole;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.whole.Peers.Event;

/** A player's sign-off and its re-checks, as fitting publishes them. */
final class SignOff {
  private final UUID player;

  SignOff(UUID player) {
    this.player = player;
  }

  Event signedOff(long version, Instant at) {
    return event(
        "signed-off",
        "signoff",
        version,
        Map.of(
            "player", player,
            "session", UuidV7.next(),
            "tag", "LV0001A",
            "model", "model-a",
            "size", "youth-medium",
            "field", "NORTH",
            "fitter", "fitter.north",
            "at", at));
  }

  Event lapsed(long version, Instant at) {
    return event(
        "sign-off-lapsed",
        "signoff",
        version,
        Map.of("player", player, "tag", "LV0001A", "why", "recheck-overdue", "at", at));
  }

  Event recheckDue(long version, Instant at, Instant lapsesAt) {
    return event(
        "recheck-due",
        "recheck",
        version,
        Map.of(
            "player", player, "tag", "LV0001A", "rule", "weekly", "at", at, "lapsesAt", lapsesAt));
  }

  private Event event(String name, String stream, long version, Object data) {
    return Event.of(
        "fitting.events",
        "org.tapeline.fitting." + name + ".v1",
        stream + "-" + player,
        version,
        player,
        data);
  }
}
