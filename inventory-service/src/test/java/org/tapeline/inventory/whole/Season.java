package org.tapeline.inventory.whole;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka.Envelope;

/**
 * Events of peer services, to be sent in any order that Kafka allows: what has one topic and one
 * key stays in order, everything else may be mixed and come again.
 */
final class Season {
  private static final EventContracts CONTRACTS = EventContracts.load();

  private final Map<String, List<Envelope>> lanes = new LinkedHashMap<>();
  private final Map<String, Long> versions = new LinkedHashMap<>();

  void enrolled(UUID player, String field) {
    sizing("player-enrolled", player, field);
  }

  void moved(UUID player, String field) {
    sizing("player-moved", player, field);
  }

  private void sizing(String event, UUID player, String field) {
    ObjectNode data = example("sizing." + event).put("player", player.toString());
    add("sizing", event, "player-" + player, player, data.put("field", field));
  }

  UUID opened(UUID player, String field, ObjectNode need) {
    UUID refitCase = UUID.randomUUID();
    ObjectNode data = example("fitting.refit-opened").put("refitCase", refitCase.toString());
    data.put("player", player.toString()).put("field", field).putArray("needs").add(need);
    add("fitting", "refit-opened", "refit-" + refitCase, player, data);
    return refitCase;
  }

  void closed(UUID refitCase, UUID player, String outcome) {
    ObjectNode data = example("fitting.refit-closed").put("refitCase", refitCase.toString());
    data.put("player", player.toString()).put("outcome", outcome);
    add("fitting", "refit-closed", "refit-" + refitCase, player, data);
  }

  void passed(UUID player, String field, String model, String... parts) {
    UUID session = UUID.randomUUID();
    ObjectNode data = example("fitting.fit-passed").put("session", session.toString());
    data.put("player", player.toString()).put("field", field).put("model", model);
    data.putArray("parts");
    List.of(parts).forEach(data.withArray("parts")::add);
    add("fitting", "fit-passed", "session-" + session, player, data);
  }

  void signedOff(UUID player, String tag, String field) {
    ObjectNode data = example("fitting.signed-off").put("player", player.toString());
    data.put("session", UUID.randomUUID().toString()).put("tag", tag).put("field", field);
    add("fitting", "signed-off", "signoff-" + player, player, data);
  }

  private void add(String service, String event, String stream, UUID key, ObjectNode data) {
    String type = "org.tapeline." + service + "." + event + ".v1";
    CONTRACTS.validateProduced(type, data);
    String topic = service + ".events";
    long version = versions.merge(stream, 1L, Long::sum);
    UUID cause = UUID.randomUUID();
    lanes
        .computeIfAbsent(topic + key, lane -> new ArrayList<>())
        .add(
            new Envelope(
                topic,
                type,
                stream,
                version,
                key.toString(),
                UUID.randomUUID(),
                cause,
                cause,
                data));
  }

  private static ObjectNode example(String event) {
    return CONTRACTS.exampleOf("org.tapeline." + event + ".v1").deepCopy();
  }

  /** All of them in one of the orders, each of them once more at some time after the first. */
  List<Envelope> mixed(Random random) {
    List<List<Envelope>> left = new ArrayList<>();
    lanes.values().forEach(lane -> left.add(new ArrayList<>(lane)));
    List<Envelope> order = new ArrayList<>();
    while (!left.isEmpty()) {
      List<Envelope> lane = left.get(random.nextInt(left.size()));
      order.add(lane.removeFirst());
      left.removeIf(List::isEmpty);
    }
    for (Envelope again : List.copyOf(order)) {
      int first = order.indexOf(again);
      order.add(first + 1 + random.nextInt(order.size() - first), again);
    }
    return order;
  }
}
