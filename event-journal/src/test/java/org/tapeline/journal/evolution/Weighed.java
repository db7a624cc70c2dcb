package org.tapeline.journal.evolution;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;

/** An event that was said in ounces first, then in grams, then with the scale that was used. */
public record Weighed(String thing, int grams, String scale) {
  static final String TYPE = "org.tapeline.test.weighed.";
  private static final int GRAMS_AN_OUNCE = 28;

  static EventTypes types() {
    return EventTypes.of("test")
        .with("weighed", 3, Weighed.class)
        .upcast("weighed", 1, Weighed::inGrams)
        .upcast("weighed", 2, Weighed::withScale)
        .downcast("weighed", 3, Weighed::withoutScale)
        .downcast("weighed", 2, Weighed::inOunces);
  }

  static Subscription read(Subscription subscription) {
    return subscription
        .upcast(TYPE + "v1", Weighed::inGrams)
        .upcast(TYPE + "v2", Weighed::withScale);
  }

  private static JsonNode inGrams(JsonNode v1) {
    ObjectNode v2 = v1.deepCopy();
    v2.put("grams", v2.remove("ounces").asInt() * GRAMS_AN_OUNCE);
    return v2;
  }

  private static JsonNode withScale(JsonNode v2) {
    ObjectNode v3 = v2.deepCopy();
    return v3.put("scale", "not-stated");
  }

  private static JsonNode withoutScale(JsonNode v3) {
    ObjectNode v2 = v3.deepCopy();
    v2.remove("scale");
    return v2;
  }

  private static JsonNode inOunces(JsonNode v2) {
    ObjectNode v1 = v2.deepCopy();
    v1.put("ounces", v1.remove("grams").asInt() / GRAMS_AN_OUNCE);
    return v1;
  }
}
