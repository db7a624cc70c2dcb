package org.tapeline.testkit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SchemaRegistryConfig;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
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

  /** A format (uuid, date-time) is asserted too; the standard leaves that open. */
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          registry ->
              registry.schemaRegistryConfig(
                  SchemaRegistryConfig.builder().formatAssertionsEnabled(true).build()));

  private final Map<String, JsonNode> byType;

  private EventContracts(Map<String, JsonNode> byType) {
    this.byType = byType;
  }

  /**
   * Reads {@code docs/events/<service>/<event>.v<n>.json} of the checkout: the one that the build
   * names in {@code tapeline.root}, else the one that the working directory lies in.
   */
  public static EventContracts load() {
    Path root = checkout().resolve("docs/events");
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

  private static Path checkout() {
    String named = System.getProperty("tapeline.root");
    if (named != null) {
      return Path.of(named);
    }
    Path folder = Path.of("").toAbsolutePath();
    while (folder != null && !Files.isDirectory(folder.resolve("docs/events"))) {
      folder = folder.getParent();
    }
    if (folder == null) {
      throw new IllegalStateException(
          "No docs/events above the working directory: run from inside a checkout.");
    }
    return folder;
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
   * Every component of the view, and of the records in it, stands in the contract with a fitting
   * type; one that is not Optional is required there.
   *
   * @throws AssertionError with all that does not fit
   */
  public void checkConsumed(String type, Class<? extends Record> view) {
    List<String> errors = ConsumedFields.misfits(schema(type), view);
    if (!errors.isEmpty()) {
      throw new AssertionError(type + " as " + view.getSimpleName() + ": " + errors);
    }
  }

  private JsonNode schema(String type) {
    JsonNode schema = byType.get(type);
    if (schema == null) {
      throw new AssertionError("No contract under docs/events for " + type);
    }
    return schema;
  }
}
