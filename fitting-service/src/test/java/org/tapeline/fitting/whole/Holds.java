package org.tapeline.fitting.whole;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.testkit.TestKafka.Envelope;

/** Inventory's desk for holds as a peer on Kafka: a hold, and lifting it. */
final class Holds {
  private static final Instant NOW = Instant.now();

  private final Peers peers;

  Holds(Peers peers) {
    this.peers = peers;
  }

  /**
   * @param asks what the notice says beside the lots, such as {@code model} and {@code madeFrom}
   */
  Envelope placed(UUID hold, List<String> lots, List<String> tags, Map<String, String> asks) {
    Map<String, Object> data = new HashMap<>(asks);
    data.putAll(
        Map.of("hold", hold, "reason", "recall", "reference", "R-1", "lots", lots, "tags", tags));
    data.putAll(Map.of("matching", 1, "worn", 1, "by", "manager", "at", NOW));
    return say("hold-placed", hold, data);
  }

  /**
   * @param scope whole, lots, place or tags
   * @param of what of; of a place its code
   */
  Envelope lifted(UUID hold, String scope, List<String> of) {
    Map<String, Object> data = new HashMap<>(Map.of("hold", hold, "scope", scope));
    data.putAll(Map.of("lots", List.of(), "tags", List.of()));
    data.putAll(Map.of("helmets", 1, "by", "manager", "at", NOW));
    switch (scope) {
      case "place" -> data.put("place", of.getFirst());
      case "whole" -> {}
      default -> data.put(scope, of);
    }
    return say("hold-lifted", hold, data);
  }

  private Envelope say(String event, UUID hold, Map<String, ?> data) {
    return peers.event("inventory.events", event, "hold-" + hold, hold, data);
  }
}
