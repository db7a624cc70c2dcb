package org.tapeline.fitting.phone;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;

/** An object that was read: its fields by name and kind. Absent and {@code null} are the same. */
record JsonIn(Map<?, ?> fields) {

  static JsonIn of(Object value) {
    if (value instanceof Map<?, ?> fields) {
      return new JsonIn(fields);
    }
    throw new IllegalArgumentException("An object is needed, not: " + value);
  }

  static JsonIn read(String text) {
    return of(JsonText.read(text));
  }

  /** The objects of a list. */
  static List<JsonIn> readAll(String text) {
    if (JsonText.read(text) instanceof List<?> list) {
      return list.stream().map(JsonIn::of).toList();
    }
    throw new IllegalArgumentException("A list is needed");
  }

  List<String> names() {
    return fields.keySet().stream().map(Object::toString).toList();
  }

  Optional<String> optText(String name) {
    return Optional.ofNullable(fields.get(name)).map(Object::toString);
  }

  /** Empty text where there is none. */
  String text(String name) {
    return optText(name).orElse("");
  }

  Optional<Double> optNumber(String name) {
    return fields.get(name) instanceof Double d ? Optional.of(d) : Optional.empty();
  }

  int whole(String name) {
    return optNumber(name).map(Double::intValue).orElse(0);
  }

  boolean yes(String name) {
    return Boolean.TRUE.equals(fields.get(name));
  }

  UUID id(String name) {
    return UUID.fromString(text(name));
  }

  Instant at(String name) {
    return Instant.parse(text(name));
  }

  Optional<JsonIn> opt(String name) {
    return Optional.ofNullable(fields.get(name)).map(JsonIn::of);
  }

  List<JsonIn> list(String name) {
    return each(name, JsonIn::of);
  }

  List<String> texts(String name) {
    return each(name, Object::toString);
  }

  private <T> List<T> each(String name, Function<Object, T> read) {
    return fields.get(name) instanceof List<?> list
        ? list.stream().map(o -> read.apply(o)).toList()
        : List.of();
  }
}
