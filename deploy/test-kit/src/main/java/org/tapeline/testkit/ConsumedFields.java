package org.tapeline.testkit;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a consumer's record reads, held against a JSON Schema. */
final class ConsumedFields {
  private final List<String> misfits = new ArrayList<>();

  private ConsumedFields() {}

  /** All that does not fit, in words; empty when the record can read whatever the schema allows. */
  static List<String> misfits(JsonNode schema, Class<?> view) {
    ConsumedFields fields = new ConsumedFields();
    fields.record("", schema, view);
    return fields.misfits;
  }

  private void record(String path, JsonNode schema, Class<?> view) {
    Set<String> required = new HashSet<>();
    schema.path("required").forEach(name -> required.add(name.asText()));
    for (RecordComponent component : view.getRecordComponents()) {
      String name = path + component.getName();
      JsonNode property = schema.path("properties").path(component.getName());
      boolean optional = component.getType() == Optional.class;
      if (property.isMissingNode()) {
        misfits.add(name + " is not in the contract");
      } else if (!optional && !required.contains(component.getName())) {
        misfits.add(name + " may be absent");
      } else {
        Type type = component.getGenericType();
        value(name, property, optional ? argument(type, 0) : type);
      }
    }
  }

  private void value(String name, JsonNode property, Type type) {
    Class<?> java = erased(type);
    if (java == Object.class || isA(JsonNode.class, java)) {
      return;
    }
    if (!fits(java, property)) {
      misfits.add(name + " is " + property.path("type"));
    } else if (isA(Collection.class, java)) {
      value(name + "[]", property.path("items"), argument(type, 0));
    } else if (isA(Map.class, java) && property.path("additionalProperties").isObject()) {
      value(name + "{}", property.path("additionalProperties"), argument(type, 1));
    } else if (java.isRecord()) {
      record(name + ".", property, java);
    }
  }

  private static boolean fits(Class<?> java, JsonNode property) {
    boolean number = java.isPrimitive() && java != boolean.class || isA(Number.class, java);
    boolean fraction = java == double.class || java == Double.class || java == BigDecimal.class;
    return switch (typeOf(property)) {
      case "integer" -> number;
      case "number" -> number && fraction;
      case "boolean" -> java == boolean.class || java == Boolean.class;
      case "array" -> isA(Collection.class, java);
      case "object" -> java.isRecord() || isA(Map.class, java);
      // Text, or a type that is written as text: an id, a time, a date, a code.
      case "string" ->
          !java.isPrimitive()
              && !number
              && !java.isRecord()
              && java != Boolean.class
              && !isA(Map.class, java)
              && !isA(Collection.class, java);
      default -> false;
    };
  }

  private static Type argument(Type type, int index) {
    return type instanceof ParameterizedType generic
        ? generic.getActualTypeArguments()[index]
        : Object.class;
  }

  private static Class<?> erased(Type type) {
    if (type instanceof ParameterizedType generic) {
      return (Class<?>) generic.getRawType();
    }
    return type instanceof Class<?> plain ? plain : Object.class;
  }

  private static boolean isA(Class<?> wanted, Class<?> java) {
    return wanted.isAssignableFrom(java);
  }

  /** Of a nullable property the type that it has when it is there. */
  private static String typeOf(JsonNode property) {
    JsonNode type = property.path("type");
    for (JsonNode one : type) {
      if (!one.asText().equals("null")) {
        return one.asText();
      }
    }
    return type.asText();
  }
}
