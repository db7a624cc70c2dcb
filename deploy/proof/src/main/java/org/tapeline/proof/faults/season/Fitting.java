package org.tapeline.proof.faults.season;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.StreamSupport;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.season.People.Player;

/**
 * A fit session: a helmet from the field, every check, a pass; or a check that fails, and no fit.
 * Either step by step, or taken down on a phone without signal and sent later in one go.
 */
final class Fitting {
  private static final int FAILS_IN_100 = 30;
  private static final int WITH_PARTS_IN_100 = 40;

  private static final List<String> SIZES = List.of("youth-small", "youth-medium", "youth-large");

  private final List<String> checks;

  /**
   * @param checks ids of the protocol's checks
   */
  Fitting(List<String> checks) {
    this.checks = List.copyOf(checks);
  }

  /** A helmet that is free at a field. */
  private record Free(String tag, String size, String model) {}

  /** A step: its path below the session, its body and the event that it is recorded as. */
  private record Step(String path, Map<String, Object> body, String event) {}

  void online(Player player, Gate gate, Random random) throws Gate.Away {
    Optional<Free> helmet = free(player, gate, random);
    if (helmet.isEmpty()) {
      return;
    }
    Map<String, Object> body = Map.of("player", player.id().toString(), "field", player.field());
    Command open = command(player, random, "sessions", Gate.json(body)).leadingTo("session-opened");
    Ledger.Entry opened = gate.send(open, random);
    if (!opened.accepted()) {
      return;
    }
    String session = Gate.json(opened.answer()).get("session").asText();
    for (Step step : steps(helmet.get(), random)) {
      String path = "sessions/" + session + "/" + step.path();
      Command next = command(player, random, path, Gate.json(step.body()));
      if (!gate.send(also(next, step), random).accepted()) {
        abandon(player, session, gate, random);
        return;
      }
    }
  }

  /** What was refused stops the session; it is ended, so that the player can have another. */
  private static void abandon(Player player, String session, Gate gate, Random random) {
    String path = "sessions/" + session + "/abandon";
    String body = Gate.json(Map.of("why", "interrupted"));
    gate.send(command(player, random, path, body).leadingTo("session-abandoned"), random);
  }

  /** The phone gave the session its id and counts what it entered. */
  void offline(Player player, Gate gate, Random random) throws Gate.Away {
    Optional<Free> helmet = free(player, gate, random);
    if (helmet.isEmpty()) {
      return;
    }
    UUID session = Ids.next(random);
    List<Command> batch = new ArrayList<>();
    Instant entered = Instant.now().minusSeconds(20);
    Map<String, Object> open =
        Map.of(
            "player", player.id().toString(),
            "field", player.field(),
            "session", session.toString(),
            "enteredAt", entered.toString());
    batch.add(
        fromPhone(player, random, "sessions", Gate.json(open), 0).leadingTo("session-opened"));
    for (Step step : steps(helmet.get(), random)) {
      Map<String, Object> body = new HashMap<>(step.body());
      body.put("enteredAt", entered.plusMillis(500L * batch.size()).toString());
      String path = "sessions/" + session + "/" + step.path();
      batch.add(also(fromPhone(player, random, path, Gate.json(body), batch.size()), step));
    }
    for (Command command : batch) {
      if (!gate.send(command, random).accepted()) {
        abandon(player, session.toString(), gate, random);
        return;
      }
    }
  }

  private static Command fromPhone(
      Player player, Random random, String path, String body, int known) {
    return Command.json(
            Ids.next(random),
            "phone entry",
            Part.FITTING,
            player.fitter(),
            path,
            body,
            player.number())
        .withHeader("Events-Known", Integer.toString(known))
        .withHeader("Entered-By", player.fitter());
  }

  private static Command command(Player player, Random random, String path, String body) {
    return Command.json(
        Ids.next(random),
        "session step",
        Part.FITTING,
        player.fitter(),
        path,
        body,
        player.number());
  }

  /** A pass is the sign-off as well. */
  private static Command also(Command command, Step step) {
    Command with = command.leadingTo(step.event());
    return step.event().equals("fit-passed") ? with.leadingTo("signed-off") : with;
  }

  private List<Step> steps(Free helmet, Random random) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(
            "helmet", Map.of("tag", helmet.tag(), "sizeLabel", helmet.size()), "helmet-tried"));
    if (random.nextInt(100) < FAILS_IN_100) {
      steps.add(
          new Step(
              "checks",
              Map.of("check", "snug", "result", "fail", "finding", "tight"),
              "check-recorded"));
      List<Map<String, Object>> needs = needs(helmet, SIZES.get(random.nextInt(SIZES.size())));
      steps.add(new Step("fail", Map.of("needs", needs), "fit-failed"));
      return steps;
    }
    for (String check : checks) {
      steps.add(new Step("checks", Map.of("check", check, "result", "pass"), "check-recorded"));
    }
    List<String> parts =
        helmet.model().equals("model-a") && random.nextInt(100) < WITH_PARTS_IN_100
            ? List.of("jaw-pad-15mm")
            : List.of();
    steps.add(
        new Step("pass", Map.of("airCelsius", 20, "hair", "usual", "parts", parts), "fit-passed"));
    return steps;
  }

  private static List<Map<String, Object>> needs(Free helmet, String size) {
    return List.of(Map.of("kind", "helmet", "model", helmet.model(), "size", size));
  }

  private static Optional<Free> free(Player player, Gate gate, Random random) throws Gate.Away {
    JsonNode all =
        gate.look("manager", "/inventory/api/helmets?state=available&place=" + player.field());
    List<Free> free =
        StreamSupport.stream(all.spliterator(), false)
            .map(
                h ->
                    new Free(
                        h.get("tag").asText(), h.get("size").asText(), h.get("model").asText()))
            .toList();
    return free.isEmpty() ? Optional.empty() : Optional.of(free.get(random.nextInt(free.size())));
  }
}
