package org.tapeline.proof.faults.season;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.StreamSupport;
import org.tapeline.proof.faults.process.Part;

/** What befalls helmets: damage, inspections, holds and lifts. */
final class Helmets {
  private static final int STRUCTURAL_IN_100 = 70;
  private static final int MOST_HELD = 5;

  private Helmets() {}

  static void damage(Gate gate, Random random) throws Gate.Away {
    String state = random.nextInt(4) == 0 ? "available" : "issued";
    Optional<String> tag = any(gate, state, random);
    if (tag.isEmpty()) {
      return;
    }
    boolean structural = random.nextInt(100) < STRUCTURAL_IN_100;
    String body = Gate.json(Map.of("where", "shell", "what", structural ? "crack" : "scratch"));
    String kind = structural ? "structural damage" : "cosmetic damage";
    send(gate, random, kind, "manager", "helmets/" + tag.get() + "/damage", body, tag.get())
        .with("damage-reported");
  }

  static void inspection(Gate gate, Random random) throws Gate.Away {
    Optional<String> tag = any(gate, "quarantined", random);
    if (tag.isEmpty()) {
      return;
    }
    Map<String, Object> found =
        Map.of(
            "outcome", "back-to-stock", "findings", List.of("nothing-found"), "parts", List.of());
    String path = "helmets/" + tag.get() + "/inspection";
    send(gate, random, "inspection", "depot", path, Gate.json(found), tag.get())
        .with("helmet-inspected");
  }

  static void hold(Gate gate, Random random) throws Gate.Away {
    List<String> tags = new ArrayList<>(tags(gate, "issued"));
    tags.addAll(tags(gate, "available"));
    if (tags.isEmpty()) {
      return;
    }
    Collections.shuffle(tags, random);
    List<String> some = tags.subList(0, Math.min(tags.size(), 1 + random.nextInt(MOST_HELD)));
    Map<String, Object> ask =
        Map.of(
            "reason",
            "recall",
            "reference",
            "TRIAL-" + random.nextInt(1_000_000),
            "tags",
            String.join("\n", some));
    send(gate, random, "hold", "manager", "holds", Gate.json(ask), String.join(" ", some))
        .with("hold-placed");
  }

  static void lift(Gate gate, Random random) throws Gate.Away {
    List<String> open =
        StreamSupport.stream(gate.look("manager", "/inventory/api/holds").spliterator(), false)
            .filter(hold -> hold.path("open").asBoolean())
            .map(hold -> hold.get("hold").asText())
            .toList();
    if (open.isEmpty()) {
      return;
    }
    String hold = open.get(random.nextInt(open.size()));
    String body = Gate.json(Map.of("scope", "whole"));
    send(gate, random, "lift", "manager", "holds/" + hold + "/lift", body, hold)
        .with("hold-lifted");
  }

  /** A command that is about to be sent: what must follow is said last. */
  private record Ready(Gate gate, Random random, Command command) {
    void with(String event) {
      gate.send(command.leadingTo(event), random);
    }
  }

  private static Ready send(
      Gate gate, Random random, String kind, String user, String path, String body, String about) {
    Command command = Command.json(Ids.next(random), kind, Part.INVENTORY, user, path, body, about);
    return new Ready(gate, random, command);
  }

  private static Optional<String> any(Gate gate, String state, Random random) throws Gate.Away {
    List<String> tags = tags(gate, state);
    return tags.isEmpty() ? Optional.empty() : Optional.of(tags.get(random.nextInt(tags.size())));
  }

  private static List<String> tags(Gate gate, String state) throws Gate.Away {
    JsonNode all = gate.look("manager", "/inventory/api/helmets?state=" + state);
    return StreamSupport.stream(all.spliterator(), false).map(h -> h.get("tag").asText()).toList();
  }
}
