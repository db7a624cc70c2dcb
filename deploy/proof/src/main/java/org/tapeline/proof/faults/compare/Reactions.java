package org.tapeline.proof.faults.compare;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** No cause has led to the same event twice: nothing that came again was done again. */
final class Reactions implements Check {
  /** What follows from the clock or from ids of its own may differ and be the same. */
  private static final Set<String> NOT_COMPARED = Set.of("at", "notice");

  @Override
  public void look(Evidence evidence, Findings findings) {
    Map<String, Event> seen = new HashMap<>();
    for (Event event : evidence.all()) {
      String what =
          event.causation() + " " + event.stream() + " " + event.type() + " " + data(event.data());
      Event before = seen.putIfAbsent(what, event);
      if (before != null) {
        findings.doubled("reactions", before + " and " + event + " say the same of one cause");
      }
    }
    findings.looked("events in four journals", evidence.all().size());
  }

  private static JsonNode data(JsonNode data) {
    if (data instanceof ObjectNode object) {
      return object.deepCopy().remove(NOT_COMPARED);
    }
    return data;
  }
}
