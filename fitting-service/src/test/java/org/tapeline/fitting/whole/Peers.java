package org.tapeline.fitting.whole;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;

/** Says what sizing and inventory say, in stream order, and nothing that breaks their contracts. */
final class Peers implements AutoCloseable {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final Instant NOW = Instant.now();

  final TestKafka kafka;
  private final Map<String, Long> versions = new HashMap<>();

  Peers(String bootstrapServers) {
    this.kafka = new TestKafka(bootstrapServers);
  }

  Envelope event(String topic, String event, String stream, Object key, Map<String, ?> data) {
    String service = topic.equals("inventory.events") ? "inventory" : "sizing";
    String type = "org.tapeline." + service + "." + event + ".v1";
    JsonNode json = EventJson.MAPPER.valueToTree(data);
    CONTRACTS.validateProduced(type, json);
    long version = versions.merge(topic + stream, 1L, Long::sum);
    UUID id = UuidV7.next();
    return new Envelope(topic, type, stream, version, key.toString(), id, id, id, json);
  }

  Peers send(Envelope... envelopes) {
    for (Envelope envelope : envelopes) {
      kafka.publish(envelope);
    }
    return this;
  }

  Envelope field(String code) {
    return event(
        "inventory.events",
        "place-listed",
        "place-" + code,
        code,
        Map.of(
            "place",
            code,
            "name",
            "Field " + code,
            "kind",
            "field",
            "altitudeM",
            300,
            "zone",
            "America/Chicago",
            "travel",
            List.of()));
  }

  Envelope details(UUID player, String number, String team, String field) {
    return event(
        "people",
        "player-details",
        "player-details-" + player,
        player,
        Map.of(
            "player",
            player,
            "number",
            number,
            "givenName",
            "Ada",
            "familyName",
            "Quillfeather",
            "birthDate",
            "2015-04-30",
            "team",
            team,
            "field",
            field,
            "guardians",
            List.of()));
  }

  Envelope enrolled(UUID player, String number, String team, String field) {
    return sizing(
        player,
        "player-enrolled",
        Map.of("player", player, "number", number, "team", team, "field", field));
  }

  Envelope sizing(UUID player, String event, Map<String, ?> data) {
    return event("sizing.events", event, "player-" + player, player, data);
  }

  Envelope advised(UUID player) {
    return sizing(
        player,
        "size-advised",
        Map.of(
            "player",
            player,
            "valueMm",
            533.4,
            "advice",
            List.of(
                Map.of(
                    "model", "model-a",
                    "chartVersion", 1,
                    "size", "youth-medium",
                    "outcome", "in-size",
                    "reason", "533 mm lies in youth medium"))));
  }

  Envelope chart() {
    return event(
        "sizing.events",
        "chart-published",
        "chart-model-a",
        "model-a",
        Map.of(
            "model",
            "model-a",
            "version",
            1,
            "sizes",
            List.of(
                Map.of("size", "youth-small", "fromMm", 495, "toMm", 520),
                Map.of("size", "youth-medium", "fromMm", 521, "toMm", 556),
                Map.of("size", "youth-large", "fromMm", 559, "toMm", 590))));
  }

  Envelope helmet(String tag, String event, Map<String, ?> data) {
    return event("inventory.events", event, "helmet-" + tag, tag, data);
  }

  Envelope received(String tag, String place) {
    return helmet(
        tag,
        "helmet-received",
        Map.of(
            "tag", tag,
            "model", "model-a",
            "size", "youth-medium",
            "lot", "L1",
            "manufacturedOn", "2025-01-15",
            "place", place,
            "at", NOW));
  }

  Envelope issued(String tag, UUID player, UUID session) {
    return helmet(
        tag,
        "helmet-issued",
        Map.of("tag", tag, "player", player, "place", "NORTH", "session", session, "at", NOW));
  }

  Envelope quarantined(String tag, UUID holder) {
    Map<String, Object> data =
        new HashMap<>(Map.of("tag", tag, "why", "damage", "place", "NORTH", "at", NOW));
    if (holder != null) {
      data.put("player", holder);
    }
    return helmet(tag, "helmet-quarantined", data);
  }

  @Override
  public void close() {
    kafka.close();
  }
}
