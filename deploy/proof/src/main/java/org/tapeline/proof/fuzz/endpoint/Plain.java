package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.tapeline.proof.fuzz.wire.Header;

/** Makes requests that could be meant: known ids, fields that the document names. */
public final class Plain {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final String COMMAND_ID = "commandId";

  private final Known known;
  private final Map<String, String> files;
  private final Optional<Signing> signing;

  /**
   * @param files CSV files that the imports take, by what they hold
   * @param signing of receipts, where the key is known
   */
  public Plain(Known known, Map<String, String> files, Optional<Signing> signing) {
    this.known = known;
    this.files = files;
    this.signing = signing;
  }

  public Draft of(Endpoint endpoint, RandomGenerator random) {
    Draft draft = new Draft(endpoint);
    endpoint.parametersIn("path").forEach(name -> draft.path.put(name, value(name, random)));
    for (String name : endpoint.parametersIn("query")) {
      if (random.nextBoolean()) {
        draft.query.add(Map.entry(name, value(name, random)));
      }
    }
    if (endpoint.kind() == Endpoint.Kind.LINK) {
      draft.header(
          "X-Forwarded-For", "10." + random.nextInt(256) + "." + random.nextInt(256) + ".1");
    }
    if (endpoint.parametersIn("header").contains("Idempotency-Key")) {
      draft.header("Idempotency-Key", draft.commandId.toString());
    }
    draft.headers.add(
        new Header("Accept", endpoint.isApi() ? "application/json" : "text/html,*/*;q=0.5"));
    if (!endpoint.bodies().isEmpty()) {
      String type = Oddities.pick(List.copyOf(endpoint.bodies().keySet()), random);
      body(draft, type, endpoint.bodies().get(type), random);
    }
    return draft;
  }

  private void body(Draft draft, String type, JsonNode schema, RandomGenerator random) {
    draft.contentType = type;
    switch (type) {
      case "application/json" -> draft.json = json("", schema, random, draft);
      case "application/x-www-form-urlencoded" -> form(draft, schema, random);
      case "multipart/form-data" -> {
        draft.contentType = type + "; boundary=" + Encoded.BOUNDARY;
        form(draft, schema, random);
      }
      case "text/csv" -> draft.bytes = Encoded.utf8(file(draft));
      case "*/*" -> {
        draft.contentType = "application/json";
        signing.ifPresent(s -> draft.signing = s);
        draft.bytes = "{\"id\":\"x\",\"status\":\"delivered\"}".getBytes(StandardCharsets.UTF_8);
      }
      default -> draft.bytes = Encoded.utf8(known.other(random));
    }
  }

  private void form(Draft draft, JsonNode schema, RandomGenerator random) {
    schema
        .path("properties")
        .properties()
        .forEach(
            field ->
                draft.form.add(Map.entry(field.getKey(), field(field.getKey(), draft, random))));
    if (schema.has("additionalProperties")) {
      draft.form.add(Map.entry(COMMAND_ID, draft.commandId.toString()));
      for (String name : List.of("place", "item", "count", "from", "amount")) {
        draft.form.add(Map.entry(name, value(name, random)));
      }
    }
  }

  private String field(String name, Draft draft, RandomGenerator random) {
    return switch (name) {
      case COMMAND_ID -> draft.commandId.toString();
      case "file", "photo" -> file(draft);
      default -> value(name, random);
    };
  }

  private String file(Draft draft) {
    return files.getOrDefault(draft.path.getOrDefault("what", ""), "a,b\n1,2\n");
  }

  private String value(String name, RandomGenerator random) {
    return known.value(name, random);
  }

  /** Of the shape of the schema; a text that is a date or an id where it says so. */
  private JsonNode json(String name, JsonNode schema, RandomGenerator random, Draft draft) {
    String type =
        schema.path("type").isArray()
            ? schema.path("type").path(0).asText()
            : schema.path("type").asText();
    return switch (type) {
      case "object" -> object(schema, random, draft);
      case "array" -> {
        ArrayNode array = JSON.arrayNode();
        for (int i = random.nextInt(3); i >= 0; i--) {
          array.add(json(name, schema.path("items"), random, draft));
        }
        yield array;
      }
      case "integer" -> JSON.numberNode(1 + random.nextInt(5));
      case "number" -> JSON.numberNode(1 + random.nextInt(50) / 2.0);
      case "boolean" -> JSON.booleanNode(random.nextBoolean());
      default -> JSON.textNode(text(name, schema, random));
    };
  }

  private String text(String name, JsonNode schema, RandomGenerator random) {
    if (!schema.path("enum").isEmpty()) {
      return schema.path("enum").path(random.nextInt(schema.path("enum").size())).asText();
    }
    return switch (schema.path("format").asText()) {
      case "date" -> "2026-12-01";
      case "date-time" -> "2026-11-27T10:00:00Z";
      case "uuid" -> known.knows(name) ? value(name, random) : value("player", random);
      default -> value(name, random);
    };
  }

  private static boolean isText(JsonNode schema) {
    return schema.path("format").isMissingNode()
        && !schema.path("type").asText("string").matches("object|array|integer|number|boolean");
  }

  private ObjectNode object(JsonNode schema, RandomGenerator random, Draft draft) {
    ObjectNode object = JSON.objectNode();
    schema
        .path("properties")
        .properties()
        .forEach(
            field -> {
              // What nobody knows a value for is mostly optional.
              boolean known = !isText(field.getValue()) || this.known.knows(field.getKey());
              if (known || random.nextInt(5) == 0) {
                object.set(field.getKey(), json(field.getKey(), field.getValue(), random, draft));
              }
            });
    return object;
  }
}
