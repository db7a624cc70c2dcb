package org.tapeline.testkit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The contracts under {@code docs/events}: a producer's test validates what it says, a consumer's
 * test checks that every field it reads is promised.
 */
public final class EventContracts {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private final Map<String, JsonNode> byType;

  private EventContracts(Map<String, JsonNode> byType) {
    this.byType = byType;
  }

  /** Reads {@code <tapeline.root>/docs/events/<service>/<event>.v<n>.json}. */
  public static EventContracts load() {
    Path root = Path.of(System.getProperty("tapeline.root"), "docs", "events");
    try (Stream<Path> files = Files.walk(root)) {
      Map<String, JsonNode> byType = new TreeMap<>();
      for (Path file : files.filter(f -> f.toString().matches(".*\\.v[0-9]+\\.json")).toList()) {
        String event = file.getFileName().toString().replaceFirst("\\.json$", "");
        String service = file.getParent().getFileName().toString();
        byType.put("org.tapeline." + service + "." + event, JSON.readTree(file.toFile()));
      }
      return new EventContracts(byType);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The types on a topic: what a service says, and personal details on {@code people} alone. */
  public Set<String> typesOf(String topic) {
    Set<String> types = new TreeSet<>();
    for (String type : byType.keySet()) {
      boolean details = type.matches(".*-details\\.v[0-9]+");
      boolean here =
          topic.equals("people")
              ? details
              : !details && type.split("\\.")[2].equals(topic.replace(".events", ""));
      if (here) {
        types.add(type);
      }
    }
    return types;
  }

  public boolean knows(String type) {
    return byType.containsKey(type);
  }

  public JsonNode exampleOf(String type) {
    return schema(type).at("/examples/0");
  }

  /** The JSON Schema of its content. */
  public JsonNode schemaOf(String type) {
    return schema(type);
  }

  /**
   * @throws AssertionError with all that does not fit
   */
  public void validateProduced(String type, JsonNode data) {
    Schema schema = REGISTRY.getSchema(schema(type).toString(), InputFormat.JSON);
    List<Error> errors = schema.validate(data.toString(), InputFormat.JSON);
    if (!errors.isEmpty()) {
      throw new AssertionError(type + ": " + errors + " in " + data);
    }
  }

  /**
   * Every component of the view stands in the contract with a fitting type; one that is not
   * Optional is required there.
   *
   * @throws AssertionError with all that does not fit
   */
  public void checkConsumed(String type, Class<? extends Record> view) {
    JsonNode schema = schema(type);
    List<String> errors = new ArrayList<>();
    Set<String> required = new TreeSet<>();
    schema.path("required").forEach(name -> required.add(name.asText()));
    for (RecordComponent component : view.getRecordComponents()) {
      JsonNode property = schema.path("properties").path(component.getName());
      boolean optional = component.getType() == Optional.class;
      if (property.isMissingNode()) {
        errors.add(component.getName() + " is not in the contract");
      } else if (!optional && !required.contains(component.getName())) {
        errors.add(component.getName() + " may be absent");
      } else if (!optional && !fits(component.getType(), property)) {
        errors.add(component.getName() + " is " + property.path("type"));
      }
    }
    if (!errors.isEmpty()) {
      throw new AssertionError(type + " as " + view.getSimpleName() + ": " + errors);
    }
  }

  private static boolean fits(Class<?> java, JsonNode property) {
    boolean number = java.isPrimitive() && java != boolean.class || isA(Number.class, java);
    return switch (typeOf(property)) {
      case "integer", "number" -> number;
      case "boolean" -> java == boolean.class || java == Boolean.class;
      case "array" -> isA(Collection.class, java);
      case "object" -> java.isRecord() || isA(Map.class, java) || isA(JsonNode.class, java);
      // Text, or a type that is written as text: an id, a time, a date, a code.
      case "string" ->
          !java.isPrimitive() && !number && !java.isRecord() && !isA(Collection.class, java);
      default -> false;
    };
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

  private JsonNode schema(String type) {
    JsonNode schema = byType.get(type);
    if (schema == null) {
      throw new AssertionError("No contract under docs/events for " + type);
    }
    return schema;
  }
}
