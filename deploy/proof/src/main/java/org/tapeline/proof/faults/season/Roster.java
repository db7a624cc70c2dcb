package org.tapeline.proof.faults.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.season.People.Player;

/** What happens to players: they are measured, move to another field, get another haircut. */
final class Roster {
  private static final List<String> FIELDS = List.of("NORTH", "RIVER", "SOUTH");

  private Roster() {}

  static void measure(Player player, Gate gate, Random random) {
    int first = player.headMm() + random.nextInt(3);
    String body = Gate.json(Map.of("readings", List.of(first + " mm", first + 1 + " mm")));
    String path = "players/" + player.number() + "/readings";
    Command command =
        Command.json(
            Ids.next(random), "reading", Part.SIZING, player.fitter(), path, body, player.number());
    gate.send(command.leadingTo("head-measured"), random);
  }

  /** By a file with that one row changed, as the association's office would send it. */
  static void move(People people, Player player, Gate gate, Random random) {
    String to = FIELDS.get(random.nextInt(FIELDS.size()));
    if (to.equals(player.field())) {
      return;
    }
    Map<String, String> row = new LinkedHashMap<>(player.row());
    row.put("field", to);
    String csv = String.join(",", row.keySet()) + "\n" + line(row) + "\n";
    Command command =
        Command.json(
                Ids.next(random),
                "roster import",
                Part.SIZING,
                "manager",
                "import/players",
                csv,
                player.number())
            .asCsv();
    if (gate.send(command.leadingTo("player-moved"), random).accepted()) {
      people.moved(player, to);
    }
  }

  private static String line(Map<String, String> row) {
    List<String> cells = new ArrayList<>();
    row.values().forEach(value -> cells.add('"' + value.replace("\"", "\"\"") + '"'));
    return String.join(",", cells);
  }

  static void cutHair(Player player, Gate gate, Random random) {
    String hair = List.of("short", "usual", "long").get(random.nextInt(3));
    String body = Gate.json(Map.of("player", player.number(), "hair", hair));
    gate.send(ofFitting("haircut", player, "hair-changes", body, random), random);
  }

  static void suspectConcussion(Player player, Gate gate, Random random) {
    String body = Gate.json(Map.of("player", player.number()));
    Command command = ofFitting("concussion", player, "concussions", body, random);
    gate.send(command, random);
  }

  static void clearReturn(Player player, Gate gate, Random random) {
    String path = "concussions/" + player.number() + "/return";
    Command command =
        ofFitting("return cleared", player, path, Gate.json(Map.of("confirmed", true)), random);
    gate.send(command, random);
  }

  private static Command ofFitting(
      String kind, Player player, String path, String body, Random random) {
    return Command.json(
        Ids.next(random), kind, Part.FITTING, player.fitter(), path, body, player.number());
  }
}
