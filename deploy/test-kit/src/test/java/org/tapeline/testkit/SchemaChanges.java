package org.tapeline.testkit;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What of a changed schema breaks somebody: a consumer that relies on what was promised, or an old
 * event in a journal that must keep it.
 */
final class SchemaChanges {
  private static final List<String> LOWEST =
      List.of("minimum", "exclusiveMinimum", "minLength", "minItems");
  private static final List<String> HIGHEST =
      List.of("maximum", "exclusiveMaximum", "maxLength", "maxItems");

  private final List<String> broken = new ArrayList<>();

  private SchemaChanges() {}

  static List<String> breaking(String at, JsonNode was, JsonNode is) {
    SchemaChanges changes = new SchemaChanges();
    changes.compare(at, was, is);
    return changes.broken;
  }

  private void compare(String at, JsonNode was, JsonNode is) {
    if (!was.path("type").equals(is.path("type"))
        || !was.path("format").equals(is.path("format"))) {
      broken.add(at + " has another type");
    }
    if (!words(was.path("required")).equals(words(is.path("required")))) {
      broken.add(at + " requires other fields");
    }
    codes(at, was, is);
    limits(at, was, is);
    was.path("properties")
        .properties()
        .forEach(
            field -> {
              JsonNode now = is.path("properties").path(field.getKey());
              String here = at + " " + field.getKey();
              if (now.isMissingNode()) {
                broken.add(here + " was removed");
              } else {
                compare(here, field.getValue(), now);
              }
            });
    if (was.has("items")) {
      compare(at + " items", was.path("items"), is.path("items"));
    }
  }

  /** A new code is no break: consumers read codes as text. */
  private void codes(String at, JsonNode was, JsonNode is) {
    if (!is.has("enum")) {
      return;
    }
    if (!was.has("enum")) {
      broken.add(at + " is now limited to codes");
      return;
    }
    Set<String> gone = words(was.path("enum"));
    gone.removeAll(words(is.path("enum")));
    gone.forEach(code -> broken.add(at + " no longer has the code " + code));
  }

  private void limits(String at, JsonNode was, JsonNode is) {
    for (String rule : LOWEST) {
      if (is.has(rule) && (!was.has(rule) || number(is, rule).compareTo(number(was, rule)) > 0)) {
        broken.add(at + " has a higher " + rule);
      }
    }
    for (String rule : HIGHEST) {
      if (is.has(rule) && (!was.has(rule) || number(is, rule).compareTo(number(was, rule)) < 0)) {
        broken.add(at + " has a lower " + rule);
      }
    }
    if (is.has("pattern") && !is.path("pattern").equals(was.path("pattern"))) {
      broken.add(at + " has another pattern");
    }
  }

  private static BigDecimal number(JsonNode schema, String rule) {
    return schema.path(rule).decimalValue();
  }

  private static Set<String> words(JsonNode list) {
    Set<String> words = new TreeSet<>();
    list.forEach(word -> words.add(word.asText()));
    return words;
  }
}
