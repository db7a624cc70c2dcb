package org.tapeline.proof.faults.season;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.StreamSupport;
import org.tapeline.proof.faults.process.Part;

/** The warehouse: requests are picked, shipped and received, parts are brought along. */
final class Depot {
  private static final Map<String, String> NEXT =
      Map.of("requested", "pick", "picked", "ship", "shipped", "receive");
  private static final Map<String, String> SAYS =
      Map.of("pick", "restock-picked", "ship", "restock-shipped", "receive", "restock-received");

  private Depot() {}

  static void restock(Gate gate, Random random) throws Gate.Away {
    JsonNode all = gate.look("depot", "/inventory/api/restock");
    List<JsonNode> open =
        StreamSupport.stream(all.spliterator(), false)
            .filter(r -> NEXT.containsKey(state(r)))
            .toList();
    if (open.isEmpty()) {
      return;
    }
    JsonNode request = open.get(random.nextInt(open.size()));
    String step = NEXT.get(state(request));
    String id = request.get("request").asText();
    String path = "restock/" + id + "/" + step;
    Command command =
        Command.json(Ids.next(random), "restock " + step, Part.INVENTORY, "depot", path, "{}", id);
    gate.send(command.leadingTo(SAYS.get(step)), random);
  }

  private static String state(JsonNode request) {
    return request.path("state").asText().toLowerCase(Locale.ROOT);
  }

  static void bring(People.Player player, Gate gate, Random random) {
    Map<String, Object> move =
        Map.of(
            "from", "DEPOT",
            "to", player.field(),
            "item", "jaw-pad-15mm",
            "model", "model-a",
            "quantity", 1 + random.nextInt(3),
            "reason", "evened-out");
    Command command =
        Command.json(
            Ids.next(random),
            "parts moved",
            Part.INVENTORY,
            "depot",
            "stock/moves",
            Gate.json(move),
            player.field());
    gate.send(command.leadingTo("part-moved"), random);
  }
}
