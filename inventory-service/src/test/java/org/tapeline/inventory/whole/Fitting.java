package org.tapeline.inventory.whole;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestKafka.Message;

/** Fitting as a peer on Kafka: says what it says, and reads what inventory answers. */
final class Fitting implements AutoCloseable {
  private static final Duration LONG = Duration.ofSeconds(20);
  private static final EventContracts CONTRACTS = EventContracts.load();

  private final TestKafka kafka;

  Fitting(String bootstrapServers) {
    this.kafka = new TestKafka(bootstrapServers);
  }

  /** Opens a case with one need and tells its id. */
  UUID opens(UUID player, String field, ObjectNode need) {
    return opens(player, field, example("refit-opened"), need);
  }

  /** One that was opened at that time: who has waited longest is served first. */
  UUID opensAt(Instant at, String urgency, String field, ObjectNode need) {
    ObjectNode data = example("refit-opened").put("at", at.toString()).put("urgency", urgency);
    return opens(UUID.randomUUID(), field, data, need);
  }

  /** One that needs more than one thing. */
  UUID opensFor(String field, ObjectNode... needs) {
    return opens(UUID.randomUUID(), field, example("refit-opened"), needs);
  }

  private UUID opens(UUID player, String field, ObjectNode data, ObjectNode... needs) {
    UUID refitCase = UUID.randomUUID();
    data.put("refitCase", refitCase.toString()).put("player", player.toString());
    data.put("field", field).putArray("needs").addAll(List.of(needs));
    say("refit-opened", "refit-" + refitCase, 1, player, data);
    return refitCase;
  }

  void closes(UUID refitCase, UUID player, String outcome) {
    ObjectNode data = example("refit-closed");
    data.put("refitCase", refitCase.toString()).put("player", player.toString());
    data.put("outcome", outcome);
    say("refit-closed", "refit-" + refitCase, 2, player, data);
  }

  /** The first sign-off of that player. */
  UUID signsOff(UUID player, String tag, String field) {
    return signsOff(player, tag, field, 1);
  }

  UUID signsOff(UUID player, String tag, String field, long version) {
    return signsOff(player, tag, field, version, example("signed-off"));
  }

  /** Passed at that time, whenever it comes to inventory. */
  UUID signsOffAt(Instant at, UUID player, String tag, String field) {
    return signsOff(player, tag, field, 1, example("signed-off").put("at", at.toString()));
  }

  private UUID signsOff(UUID player, String tag, String field, long version, ObjectNode data) {
    UUID session = UUID.randomUUID();
    data.put("player", player.toString()).put("session", session.toString());
    data.put("tag", tag).put("field", field);
    say("signed-off", "signoff-" + player, version, player, data);
    return session;
  }

  /** One session in one helmet: tried on, failed, made to fit, passed. */
  void fits(UUID player, String tag, String field) {
    UUID session = UUID.randomUUID();
    String stream = "session-" + session;
    long version = 1;
    for (String event : List.of("helmet-tried", "fit-failed", "fit-passed")) {
      ObjectNode data = example(event);
      data.put("player", player.toString()).put("session", session.toString()).put("tag", tag);
      if (data.has("field")) {
        data.put("field", field);
      }
      say(event, stream, version++, player, data);
    }
  }

  /** After the first sign-off. */
  void withdraws(UUID player, String tag, String why) {
    ObjectNode data = example("sign-off-withdrawn").put("player", player.toString());
    data.put("tag", tag).put("why", why);
    say("sign-off-withdrawn", "signoff-" + player, 2, player, data);
  }

  /** In the helmet that was worn, or nobody knows in which. */
  void suspectsConcussion(UUID player, Optional<String> tag) {
    ObjectNode data = example("concussion-suspected").put("player", player.toString());
    data.remove("tag");
    tag.ifPresent(worn -> data.put("tag", worn));
    say("concussion-suspected", "concussion-" + player, 1, player, data);
  }

  void passes(UUID player, String field, String model, String... parts) {
    UUID session = UUID.randomUUID();
    ObjectNode data = example("fit-passed");
    data.put("player", player.toString()).put("session", session.toString());
    data.put("field", field).put("model", model);
    data.putArray("parts");
    for (String part : parts) {
      data.withArray("parts").add(part);
    }
    say("fit-passed", "session-" + session, 1, player, data);
  }

  /** The number in the roster by which {@link #enrols} makes a player known. */
  static String numberOf(UUID player) {
    return "LV-" + player.toString().substring(28).toUpperCase(Locale.ROOT);
  }

  /** Sizing says that they are fitted there. */
  void enrols(String field, List<UUID> players) {
    String type = "org.tapeline.sizing.player-enrolled.v1";
    for (UUID player : players) {
      ObjectNode data = CONTRACTS.exampleOf(type).deepCopy();
      data.put("player", player.toString()).put("number", numberOf(player)).put("field", field);
      UUID cause = UUID.randomUUID();
      kafka.publish(
          new Envelope(
              "sizing.events",
              type,
              "player-" + player,
              1,
              player.toString(),
              UUID.randomUUID(),
              cause,
              cause,
              data));
    }
  }

  static ObjectNode helmet(String model, String size) {
    return EventJson.MAPPER
        .createObjectNode()
        .put("kind", "helmet")
        .put("model", model)
        .put("size", size);
  }

  static ObjectNode part(String item) {
    return EventJson.MAPPER.createObjectNode().put("kind", "part").put("item", item);
  }

  /** Waits for an event that has such a value in it. */
  JsonNode hears(String event, String field, Object value) {
    return hears(event, field, value, 1).getLast();
  }

  List<JsonNode> hears(String event, String field, Object value, int wanted) {
    List<Message> found =
        kafka.await(
            "inventory.events",
            wanted,
            LONG,
            m ->
                m.type().equals(type(event))
                    && m.data().path(field).asText().equals(value.toString()));
    if (found.size() < wanted) {
      throw new AssertionError("Heard " + found + " and not " + event + " " + field + " " + value);
    }
    return found.stream().map(Message::data).toList();
  }

  /** The last of at least that many requests for an item at a place. */
  JsonNode asked(String place, String item, int wanted) {
    List<JsonNode> found =
        kafka
            .await(
                "inventory.events",
                wanted,
                LONG,
                m ->
                    m.type().equals(type("restock-requested"))
                        && m.data().path("place").asText().equals(place)
                        && m.data().path("item").asText().equals(item))
            .stream()
            .map(Message::data)
            .toList();
    if (found.size() < wanted) {
      throw new AssertionError("Heard " + found + " and not " + wanted + " for " + item);
    }
    return found.getLast();
  }

  /** Everything that inventory says once it has worked off what it was told. */
  List<Message> everything() {
    return kafka.all("inventory.events", LONG, m -> true);
  }

  private static String type(String event) {
    return "org.tapeline.inventory." + event + ".v1";
  }

  private static ObjectNode example(String event) {
    return CONTRACTS.exampleOf("org.tapeline.fitting." + event + ".v1").deepCopy();
  }

  private void say(String event, String stream, long version, UUID player, ObjectNode data) {
    String type = "org.tapeline.fitting." + event + ".v1";
    CONTRACTS.validateProduced(type, data);
    UUID cause = UUID.randomUUID();
    Envelope envelope =
        new Envelope(
            "fitting.events",
            type,
            stream,
            version,
            player.toString(),
            UUID.randomUUID(),
            cause,
            cause,
            data);
    kafka.publish(envelope).publish(envelope);
  }

  @Override
  public void close() {
    kafka.close();
  }
}
