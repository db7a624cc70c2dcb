package org.tapeline.stack.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Fit sessions of the demo: most pass, one fails, and one fitted helmet is reported damaged. */
final class DemoSessions {
  private static final Map<String, String> FITTERS =
      Map.of("NORTH", "fitter.north", "RIVER", "fitter.north", "SOUTH", "fitter.south");
  private static final int FITTED = 26;

  private final DemoHttp http;
  private final DemoRetry retry = new DemoRetry();
  private final Set<String> used = new HashSet<>();
  private List<JsonNode> checks = List.of();

  DemoSessions(DemoHttp http) {
    this.http = http;
  }

  /** How many were fitted. */
  int run() throws IOException {
    checks =
        DemoLoader.list(http.get("manager", "/fitting/api/protocol").get("checks")).stream()
            .filter(check -> check.path("required").asBoolean(true))
            .toList();
    int fitted = 0;
    String damaged = null;
    boolean failed = false;
    for (JsonNode player : DemoLoader.list(http.get("manager", "/sizing/api/players"))) {
      Optional<JsonNode> helmet = fitted < FITTED || !failed ? helmetFor(player) : Optional.empty();
      if (helmet.isEmpty()) {
        continue;
      }
      if (fitted < FITTED) {
        pass(player, helmet.get());
        damaged = helmet.get().get("tag").asText();
        fitted++;
      } else {
        fail(player, helmet.get());
        failed = true;
      }
    }
    reportDamage(damaged);
    return fitted;
  }

  /** A helmet of the advised size at the player's field that this run has not used. */
  private Optional<JsonNode> helmetFor(JsonNode player) throws IOException {
    String field = player.get("field").asText();
    if (!FITTERS.containsKey(field)) {
      return Optional.empty();
    }
    for (JsonNode advice : DemoLoader.list(player.get("advice"))) {
      String path =
          "/inventory/api/helmets?state=available&place="
              + field
              + "&model="
              + advice.get("model").asText()
              + "&size="
              + advice.path("size").asText("none");
      for (JsonNode helmet : DemoLoader.list(http.get("manager", path))) {
        if (used.add(helmet.get("tag").asText())) {
          return Optional.of(helmet);
        }
      }
    }
    return Optional.empty();
  }

  private void pass(JsonNode player, JsonNode helmet) throws IOException {
    String session = open(player, helmet, "pass");
    for (JsonNode check : checks) {
      answer(player, session, check.get("id").asText(), "pass", Map.of());
    }
    post(player, session, "pass", "pass", Map.of("airCelsius", 24, "hair", "usual"));
  }

  private void fail(JsonNode player, JsonNode helmet) throws IOException {
    String session = open(player, helmet, "fail");
    JsonNode snug =
        checks.stream()
            .filter(check -> check.get("id").asText().contains("snug"))
            .findFirst()
            .orElse(checks.getLast());
    answer(player, session, snug.get("id").asText(), "fail", Map.of("finding", "loose"));
    post(player, session, "fail", "fail", Map.of());
  }

  private String open(JsonNode player, JsonNode helmet, String name) throws IOException {
    String number = player.get("number").asText();
    String field = player.get("field").asText();
    JsonNode opened =
        retry.untilKnown(
            () ->
                http.post(
                    FITTERS.get(field),
                    name + "-open-" + number,
                    "/fitting/api/sessions",
                    Map.of("player", player.get("player").asText(), "field", field)));
    String session = opened.get("session").asText();
    retry.untilKnown(
        () ->
            post(
                player,
                session,
                name + "-helmet",
                "helmet",
                Map.of(
                    "tag", helmet.get("tag").asText(), "sizeLabel", helmet.get("size").asText())));
    return session;
  }

  private void answer(
      JsonNode player, String session, String check, String result, Map<String, Object> more)
      throws IOException {
    Map<String, Object> body = new HashMap<>(more);
    body.put("check", check);
    body.put("result", result);
    post(player, session, "check-" + check, "checks", body);
  }

  private JsonNode post(
      JsonNode player, String session, String command, String path, Map<String, Object> body)
      throws IOException {
    return http.post(
        FITTERS.get(player.get("field").asText()),
        command + "-" + session,
        "/fitting/api/sessions/" + session + "/" + path,
        body);
  }

  private void reportDamage(String tag) throws IOException {
    if (tag == null) {
      return;
    }
    retry.untilKnown(
        () ->
            http.post(
                "manager",
                "damage-" + tag,
                "/inventory/api/helmets/" + tag + "/damage",
                Map.of("where", "shell", "what", "crack")));
  }
}
