package org.tapeline.inventory.helmet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/**
 * What is read of fitting's {@code signed-off}, of whichever version.
 *
 * @param protocol by which it was checked; {@code not-stated} in old ones
 * @param protocolVersion 0 in old ones
 */
record SignedOff(
    UUID player,
    UUID session,
    String tag,
    String field,
    String protocol,
    int protocolVersion,
    Instant at) {
  private static final String EVENT = "org.tapeline.fitting.signed-off.";

  static void declareOn(Subscription subscription, BiConsumer<SignedOff, ReceivedEvent> handler) {
    subscription
        .on(EVENT + "v3", SignedOff.class, handler)
        .upcast(EVENT + "v1", v1 -> v1)
        .upcast(EVENT + "v2", SignedOff::withProtocol);
  }

  private static JsonNode withProtocol(JsonNode v2) {
    ObjectNode v3 = v2.deepCopy();
    return v3.put("protocol", "not-stated").put("protocolVersion", 0);
  }

  /** In words for the helmet's time line; empty when it was not stated. */
  String checkedBy() {
    return protocolVersion == 0 ? "" : protocol + " " + protocolVersion;
  }
}
