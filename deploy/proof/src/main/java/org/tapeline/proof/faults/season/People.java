package org.tapeline.proof.faults.season;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;

/** The roster of the season, and who looks after which field. */
final class People {
  private static final Map<String, String> FITTERS =
      Map.of("NORTH", "fitter.north", "RIVER", "fitter.north", "SOUTH", "fitter.south");

  private final List<Player> players = new ArrayList<>();

  /**
   * One of the roster.
   *
   * @param row as it stands in the roster's file, for moving the player by another import
   */
  record Player(UUID id, String number, String field, int headMm, Map<String, String> row) {

    /** Whoever may work at the player's field. */
    String fitter() {
      return FITTERS.getOrDefault(field, "manager");
    }
  }

  /** From what the service says of them and the file that they came from. */
  void add(JsonNode view, Map<String, String> row, Random random) {
    UUID id = UUID.fromString(view.get("player").asText());
    String field = view.get("field").asText();
    players.add(new Player(id, view.get("number").asText(), field, 500 + random.nextInt(100), row));
  }

  /**
   * One for whom this driver alone acts, so that two drivers seldom stand in each other's way.
   *
   * @param driver which one, from 0
   */
  synchronized Player any(Random random, int driver, int drivers) {
    int groups = Math.max(1, players.size() / drivers);
    int index = random.nextInt(groups) * drivers + driver;
    return players.get(index % players.size());
  }

  synchronized void moved(Player player, String field) {
    players.replaceAll(
        p ->
            p.id().equals(player.id())
                ? new Player(p.id(), p.number(), field, p.headMm(), p.row())
                : p);
  }
}
