package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/** What can be wrong in a body of JSON. */
final class JsonTwists {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final Predicate<Endpoint> FITS = e -> e.takes("application/json");

  private JsonTwists() {}

  static List<Twist> all(Known known) {
    return List.of(
        field("an odd text in the body", r -> JSON.textNode(Oddities.text(r))),
        field("an odd date in the body", r -> JSON.textNode(Oddities.date(r))),
        field("an odd number in the body", Oddities::number),
        field("a wrong type in the body", Oddities::shape),
        field("null in the body", r -> JSON.nullNode()),
        field("another kind in the body", r -> JSON.textNode(known.other(r))),
        new Twist("a field missing", FITS, JsonTwists::missing),
        new Twist("a field too many", FITS, JsonTwists::extra),
        new Twist("another root than an object", FITS, (d, r) -> d.json = Oddities.shape(r)),
        bytes("no body", (json, r) -> new byte[0]),
        bytes("JSON that breaks off", JsonTwists::breaksOff),
        bytes("JSON with a byte changed", JsonTwists::changed),
        bytes("JSON in another encoding", JsonTwists::otherEncoding),
        bytes("JSON deeper than allowed", (json, r) -> utf8("{\"a\":".repeat(60_000))),
        bytes("a field twice, and NaN", (json, r) -> utf8(twice(json))));
  }

  private interface Bytes {
    byte[] of(String json, RandomGenerator random);
  }

  private static Twist bytes(String name, Bytes bytes) {
    return new Twist(name, FITS, (d, r) -> d.bytes = bytes.of(d.json(), r));
  }

  private static Twist field(String name, Function<RandomGenerator, JsonNode> value) {
    return new Twist(
        name,
        FITS,
        (draft, random) -> {
          ObjectNode object = someObject(draft.json, random);
          List<String> names = new ArrayList<>();
          object.fieldNames().forEachRemaining(names::add);
          String field = names.isEmpty() ? "value" : Oddities.pick(names, random);
          JsonNode said = object.path(field);
          // In a list, often one of its members.
          if (said instanceof ArrayNode list && !list.isEmpty() && random.nextInt(3) > 0) {
            list.set(random.nextInt(list.size()), value.apply(random));
          } else {
            object.set(field, value.apply(random));
          }
        });
  }

  /** The root, or an object somewhere in it. */
  private static ObjectNode someObject(JsonNode root, RandomGenerator random) {
    List<ObjectNode> objects = new ArrayList<>();
    gather(root, objects);
    return objects.isEmpty() ? JSON.objectNode() : Oddities.pick(objects, random);
  }

  private static void gather(JsonNode node, List<ObjectNode> objects) {
    if (node instanceof ObjectNode object) {
      objects.add(object);
    }
    node.forEach(inner -> gather(inner, objects));
  }

  private static void missing(Draft draft, RandomGenerator random) {
    ObjectNode object = someObject(draft.json, random);
    List<String> names = new ArrayList<>();
    object.fieldNames().forEachRemaining(names::add);
    if (!names.isEmpty()) {
      object.remove(Oddities.pick(names, random));
    }
  }

  private static void extra(Draft draft, RandomGenerator random) {
    ObjectNode object = someObject(draft.json, random);
    object.set("nobodyKnows", Oddities.shape(random));
    object.put("class", "java.lang.Object");
    object.put("@type", "java.util.HashMap");
  }

  private static byte[] breaksOff(String json, RandomGenerator random) {
    return utf8(json.substring(0, random.nextInt(Math.max(1, json.length()))));
  }

  private static byte[] changed(String json, RandomGenerator random) {
    byte[] bytes = utf8(json.isEmpty() ? "{}" : json);
    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    return bytes;
  }

  private static byte[] otherEncoding(String json, RandomGenerator random) {
    return switch (random.nextInt(4)) {
      case 0 -> json.getBytes(StandardCharsets.UTF_16);
      case 1 -> json.getBytes(StandardCharsets.UTF_16LE);
      case 2 -> ("\ufeff" + json).getBytes(StandardCharsets.UTF_8);
      default ->
          ("{\"a\":\"\u00fc\u00e9\"," + json.substring(Math.min(1, json.length())))
              .getBytes(StandardCharsets.ISO_8859_1);
    };
  }

  private static String twice(String json) {
    String rest = json.length() > 2 ? "," + json.substring(1) : "}";
    return "{\"readings\":NaN,\"readings\":[],\"player\":1,\"player\":2" + rest;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
