package org.tapeline.fitting.signoff;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tapeline.journal.EventTypes;

/**
 * What {@code signed-off} has said over time. Version 1 said who, in which helmet and by whom;
 * version 2 also under which conditions, so that the re-checks follow from the sign-off alone;
 * version 3 also by which protocol it was checked.
 */
public final class SignedOffVersions {
  private static final String EVENT = "signed-off";

  private SignedOffVersions() {}

  public static EventTypes declareOn(EventTypes types) {
    return types
        .with(EVENT, 3, SignOffEvent.SignedOff.class)
        .upcast(EVENT, 1, SignedOffVersions::withConditions)
        .upcast(EVENT, 2, SignedOffVersions::withProtocol)
        .downcast(EVENT, 3, json -> without(json, "protocol", "protocolVersion"))
        .downcast(EVENT, 2, json -> without(json, "conditions"));
  }

  /** What was not noted then is not known now. */
  private static JsonNode withConditions(JsonNode v1) {
    ObjectNode v2 = v1.deepCopy();
    v2.putObject("conditions");
    return v2;
  }

  private static JsonNode withProtocol(JsonNode v2) {
    ObjectNode v3 = v2.deepCopy();
    return v3.put("protocol", "not-stated").put("protocolVersion", 0);
  }

  private static JsonNode without(JsonNode json, String... fields) {
    ObjectNode less = json.deepCopy();
    for (String field : fields) {
      less.remove(field);
    }
    return less;
  }
}
