package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.response.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestKafka.Message;

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

  /** Somebody enrolled and advised, and a helmet of that size at the field. */
  Person arrives(String field) {
    return arrives(Person.next(), field);
  }

  Person arrives(Person person, String field) {
    send(
        field(field),
        chart(),
        details(person.player(), person.number(), person.team(), field),
        enrolled(person.player(), person.number(), person.team(), field),
        advised(person.player()),
        received(person.tag(), field));
    await()
        .atMost(Fitter.PATIENCE)
        .untilAsserted(
            () -> {
              Response answer = Fitter.as("manager").get("/api/players/" + person.player());
              assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
              assertThat(answer.asString()).contains("youth-medium", person.number());
            });
    return person;
  }

  /** The newest event of that kind on that player, which keeps its contract. */
  Message hears(String event, UUID player) {
    List<Message> found =
        kafka.await(
            "fitting.events",
            1,
            Fitter.PATIENCE,
            m ->
                m.type().matches("org.tapeline.fitting." + event + ".v[0-9]+")
                    && m.key().equals(player.toString()));
    assertThat(found).as(event).isNotEmpty();
    found.forEach(m -> CONTRACTS.validateProduced(m.type(), m.data()));
    return found.getLast();
  }

  /** All that fitting says on the player once it has worked off what it was told. */
  List<Message> heardOf(UUID player) {
    return kafka.all("fitting.events", Fitter.PATIENCE, m -> m.key().equals(player.toString()));
  }

  /** The case that was opened for the player. */
  UUID refitOf(UUID player) {
    return UUID.fromString(hears("refit-opened", player).data().get("refitCase").asText());
  }

  Envelope field(String code) {
    return field(code, "America/Chicago");
  }

  Envelope field(String code, String zone) {
    return field(code, zone, Map.of());
  }

  /** With roads from there, in minutes. */
  Envelope field(String code, String zone, Map<String, Integer> roads) {
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
            zone,
            "travel",
            roads.entrySet().stream()
                .map(road -> Map.of("to", road.getKey(), "minutes", road.getValue()))
                .toList()));
  }

  Envelope details(UUID player, String number, String team, String field) {
    return details(player, number, team, field, "Quillfeather");
  }

  Envelope details(UUID player, String number, String team, String field, String familyName) {
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
            familyName,
            "birthDate",
            "2015-04-30",
            "team",
            team,
            "field",
            field,
            "guardians",
            List.of()));
  }

  Envelope guardian(UUID guardian, UUID... players) {
    return event(
        "people",
        "guardian-details",
        "guardian-details-" + guardian,
        guardian,
        Map.of(
            "guardian",
            guardian,
            "name",
            "Bea Quillfeather",
            "language",
            "en",
            "players",
            List.of(players)));
  }

  Envelope guardianErased(UUID guardian) {
    String stream = "guardian-details-" + guardian;
    long version = versions.merge("people" + stream, 1L, Long::sum);
    String type = "org.tapeline.sizing.guardian-details.v1";
    UUID id = UuidV7.next();
    return new Envelope("people", type, stream, version, guardian.toString(), id, id, id, null);
  }

  Envelope enrolled(UUID player, String number, String team, String field) {
    return sizing(
        player,
        "player-enrolled",
        Map.of("player", player, "number", number, "team", team, "field", field));
  }

  Envelope moved(UUID player, String team, String field) {
    return sizing(player, "player-moved", Map.of("player", player, "team", team, "field", field));
  }

  Envelope left(UUID player) {
    return sizing(player, "player-left", Map.of("player", player));
  }

  Envelope sizing(UUID player, String event, Map<String, ?> data) {
    return event("sizing.events", event, "player-" + player, player, data);
  }

  Envelope advised(UUID player) {
    return advised(player, "youth-medium");
  }

  Envelope advised(UUID player, String size) {
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
                    "size", size,
                    "outcome", "in-size",
                    "reason", "533 mm lies in this size"))));
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
    return received(tag, place, "youth-medium");
  }

  Envelope received(String tag, String place, String size) {
    return received(tag, place, size, "L1", "2025-01-15");
  }

  /** At NORTH, of that lot and made on that day. */
  Envelope receivedOf(String tag, String lot, String madeOn) {
    return received(tag, "NORTH", "youth-medium", lot, madeOn);
  }

  private Envelope received(String tag, String place, String size, String lot, String madeOn) {
    return helmet(
        tag,
        "helmet-received",
        Map.of(
            "tag", tag,
            "model", "model-a",
            "size", size,
            "lot", lot,
            "manufacturedOn", madeOn,
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

  /** On hold; with a player or without. */
  Envelope held(String tag, UUID hold, UUID holder) {
    Map<String, Object> data =
        new HashMap<>(
            Map.of("tag", tag, "hold", hold, "place", "NORTH", "state", "held", "at", NOW));
    if (holder != null) {
      data.put("player", holder);
    }
    return helmet(tag, "helmet-held", data);
  }

  Envelope freed(String tag, UUID hold, String state) {
    return helmet(
        tag,
        "helmet-freed",
        Map.of("tag", tag, "hold", hold, "place", "NORTH", "state", state, "at", NOW));
  }

  Envelope recertified(String tag, LocalDate until) {
    return helmet(
        tag,
        "helmet-recertified",
        Map.of("tag", tag, "certifiedUntil", until, "how", "label-read", "by", "depot", "at", NOW));
  }

  Envelope retired(String tag) {
    return helmet(tag, "helmet-retired", Map.of("tag", tag, "why", "inspection", "at", NOW));
  }

  Envelope returned(String tag, UUID player, String place) {
    Instant later = NOW.plusSeconds(3_600);
    Map<String, ?> data = Map.of("tag", tag, "player", player, "place", place, "at", later);
    return helmet(tag, "helmet-returned", data);
  }

  Envelope brought(String tag, String to) {
    return helmet(
        tag, "helmet-moved", Map.of("tag", tag, "from", "ELSEWHERE", "to", to, "at", NOW));
  }

  /** An event of inventory as its contract shows it. */
  Envelope example(String event, String stream) {
    JsonNode data = CONTRACTS.exampleOf("org.tapeline.inventory." + event + ".v1");
    return event(
        "inventory.events",
        event,
        stream,
        stream,
        EventJson.MAPPER.convertValue(data, new TypeReference<Map<String, Object>>() {}));
  }

  /** Of a kind that a newer inventory may have. */
  Envelope unheardOf() {
    UUID id = UuidV7.next();
    String stream = "novelty-" + id;
    return new Envelope(
        "inventory.events",
        "org.tapeline.inventory.novelty.v1",
        stream,
        1,
        stream,
        id,
        id,
        id,
        EventJson.MAPPER.createObjectNode());
  }

  Envelope inspected(String tag) {
    return helmet(
        tag,
        "helmet-inspected",
        Map.of(
            "tag",
            tag,
            "outcome",
            "back-to-stock",
            "findings",
            List.of("paint-only"),
            "by",
            "depot",
            "at",
            NOW));
  }

  Envelope refused(String tag, UUID player, UUID session) {
    return helmet(
        tag,
        "issue-refused",
        Map.of("tag", tag, "player", player, "session", session, "why", "held", "at", NOW));
  }

  Envelope released(UUID refitCase, UUID player, String tag) {
    return event(
        "inventory.events",
        "reservation-released",
        "reservation-" + refitCase,
        player,
        Map.of("refitCase", refitCase, "player", player, "tag", tag, "why", "expired"));
  }

  /** A helmet is kept for a case and is there at once. */
  Envelope reserved(UUID refitCase, UUID player, String tag, String size) {
    return event(
        "inventory.events",
        "replacement-reserved",
        "reservation-" + refitCase,
        player,
        Map.of(
            "refitCase",
            refitCase,
            "player",
            player,
            "need",
            Map.of("kind", "helmet", "model", "model-a", "size", size),
            "tag",
            tag,
            "fromPlace",
            "DEPOT",
            "toPlace",
            "NORTH",
            "readyAt",
            NOW,
            "expiresAt",
            NOW.plusSeconds(86_400)));
  }

  /** A part is kept for a case and is there at once. */
  Envelope reserved(UUID refitCase, UUID player, String item) {
    return event(
        "inventory.events",
        "replacement-reserved",
        "reservation-" + refitCase,
        player,
        Map.of(
            "refitCase",
            refitCase,
            "player",
            player,
            "need",
            Map.of("kind", "part", "item", item),
            "fromPlace",
            "DEPOT",
            "toPlace",
            "NORTH",
            "readyAt",
            NOW,
            "expiresAt",
            NOW.plusSeconds(86_400)));
  }

  /** A helmet for a case has to be ordered. */
  Envelope missing(UUID refitCase, UUID player, String size) {
    return event(
        "inventory.events",
        "replacement-missing",
        "reservation-" + refitCase,
        player,
        Map.of(
            "refitCase",
            refitCase,
            "player",
            player,
            "needs",
            List.of(Map.of("kind", "helmet", "model", "model-a", "size", size)),
            "toPlace",
            "NORTH",
            "requests",
            List.of(UUID.randomUUID()),
            "expectedAt",
            NOW.plusSeconds(86_400)));
  }

  @Override
  public void close() {
    kafka.close();
  }
}
