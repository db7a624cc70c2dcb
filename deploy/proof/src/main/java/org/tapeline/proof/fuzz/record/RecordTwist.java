package org.tapeline.proof.fuzz.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import org.tapeline.proof.fuzz.endpoint.Oddities;

/**
 * One thing that is wrong with a record.
 *
 * @param name what is wrong, as the report says it
 */
record RecordTwist(String name, BiConsumer<RecordDraft, RandomGenerator> change) {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final List<String> HEADERS =
      List.of(
          "ce_id",
          "ce_type",
          "ce_subject",
          "ce_streamversion",
          "ce_time",
          "ce_correlationid",
          "ce_causationid");
  private static final List<String> VERSIONS =
      List.of("0", "-1", "2", "7", "9223372036854775807", "9223372036854775808", "1.0", "one");
  private static final List<String> TYPES =
      List.of(
          "org.tapeline.sizing.nothing-known.v1",
          "org.tapeline.sizing.player-enrolled.v99",
          "org.tapeline.fitting.signed-off.v0",
          "org.tapeline.x",
          "v1",
          "org.tapeline.sizing.A.v1");

  static List<RecordTwist> all() {
    return List.of(
        new RecordTwist("a header missing", (d, r) -> d.headers.remove(name(r))),
        new RecordTwist("an odd header", (d, r) -> d.header(name(r), Oddities.text(r))),
        new RecordTwist("a header with a NUL", (d, r) -> d.header(name(r), "a\0b")),
        new RecordTwist("a header that is no text", RecordTwist::noText),
        new RecordTwist("a header far too long", (d, r) -> d.header(name(r), far(r))),
        new RecordTwist(
            "an odd version", (d, r) -> d.header("ce_streamversion", pick(VERSIONS, r))),
        new RecordTwist("an unknown type", (d, r) -> d.header("ce_type", pick(TYPES, r))),
        new RecordTwist("an odd time", (d, r) -> d.header("ce_time", Oddities.date(r))),
        new RecordTwist("no key", (d, r) -> d.key = null),
        new RecordTwist("an odd key", (d, r) -> d.key = Oddities.text(r)),
        new RecordTwist("a tombstone", (d, r) -> d.payload = null),
        payload("no content", r -> new byte[0]),
        payload("random bytes", RecordTwist::random),
        payload("content with a NUL", r -> utf8("{\"a\":\"x\0y\"}")),
        payload("content that is null", r -> utf8("null")),
        payload("content that is a list", r -> utf8("[1,2,3]")),
        payload("content deeper than allowed", r -> utf8("[".repeat(50_000))),
        payload("much content", r -> utf8("{\"reason\":\"" + "x".repeat(700_000) + "\"}")),
        new RecordTwist("content that breaks off", RecordTwist::breaksOff),
        field("an odd text in it", r -> JSON.textNode(Oddities.text(r))),
        field("an odd date in it", r -> JSON.textNode(Oddities.date(r))),
        field("a wrong type in it", Oddities::shape),
        field("null in it", r -> JSON.nullNode()),
        new RecordTwist("a field missing", RecordTwist::missing));
  }

  private static RecordTwist payload(String name, Function<RandomGenerator, byte[]> bytes) {
    return new RecordTwist(name, (draft, random) -> draft.payload = bytes.apply(random));
  }

  private static RecordTwist field(String name, Function<RandomGenerator, JsonNode> value) {
    return new RecordTwist(
        name,
        (draft, random) -> {
          ObjectNode data = draft.data();
          List<String> names = new ArrayList<>();
          data.fieldNames().forEachRemaining(names::add);
          if (!names.isEmpty()) {
            data.set(pick(names, random), value.apply(random));
          }
          draft.data(data);
        });
  }

  private static void missing(RecordDraft draft, RandomGenerator random) {
    ObjectNode data = draft.data();
    List<String> names = new ArrayList<>();
    data.fieldNames().forEachRemaining(names::add);
    if (!names.isEmpty()) {
      data.remove(pick(names, random));
    }
    draft.data(data);
  }

  private static void noText(RecordDraft draft, RandomGenerator random) {
    draft.headers.put(name(random), new byte[] {(byte) 0xff, (byte) 0xfe, (byte) 0xc0, 0});
  }

  private static String far(RandomGenerator random) {
    StringBuilder text = new StringBuilder();
    random.ints(5_000, 0x4e00, 0x9f00).forEach(text::appendCodePoint);
    return text.toString();
  }

  private static byte[] random(RandomGenerator random) {
    byte[] bytes = new byte[1 + random.nextInt(200)];
    random.nextBytes(bytes);
    return bytes;
  }

  private static void breaksOff(RecordDraft draft, RandomGenerator random) {
    draft.payload = java.util.Arrays.copyOf(draft.payload, random.nextInt(draft.payload.length));
  }

  private static String name(RandomGenerator random) {
    return pick(HEADERS, random);
  }

  private static <T> T pick(List<T> from, RandomGenerator random) {
    return Oddities.pick(from, random);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
