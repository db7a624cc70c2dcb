package org.tapeline.stack.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.tapeline.stack.demo.DemoHelmets.Helmet;

/** Fit sessions of the demo: most pass, one fails. */
final class DemoSessions {
  private static final Map<String, String> FITTERS =
      Map.of("NORTH", "fitter.north", "RIVER", "fitter.north", "SOUTH", "fitter.south");

  /** How many of each team are fitted already; the rest is for whoever tries the demo. */
  private static final Map<String, Integer> FITTED =
      Map.of("U10-HAWKS", 10, "U12-KITES", 5, "U8-OTTERS", 4, "U12-HERONS", 3, "U10-FOXES", 4);

  /** Too tight in a medium of model A: the larger one that it needs is not at that field. */
  private static final String FAILING_TEAM = "U10-FOXES";

  private static final String FAILING_MODEL = "model-a";
  private static final String FAILING_SIZE = "youth-medium";

  private final DemoHttp http;
  private final DemoHelmets helmets;
  private final DemoRetry retry = new DemoRetry();
  private final List<Fitted> fitted = new ArrayList<>();
  private List<String> checks = List.of();
  private boolean failed;

  DemoSessions(DemoHttp http, DemoHelmets helmets) {
    this.http = http;
    this.helmets = helmets;
  }

  /** A player signed off in a helmet. */
  record Fitted(String player, String team, String field, String tag) {}

  /** Who was fitted, by number in the roster. */
  List<Fitted> run() throws IOException {
    checks =
        DemoLoader.list(http.get("manager", "/fitting/api/protocol").get("checks")).stream()
            .filter(check -> check.path("required").asBoolean(true))
            .map(check -> check.get("id").asText())
            .toList();
    List<JsonNode> players =
        DemoLoader.list(http.get("manager", "/sizing/api/players")).stream()
            .sorted(Comparator.comparing((JsonNode p) -> p.get("number").asText()))
            .toList();
    for (JsonNode player : players) {
      fit(player);
    }
    return fitted;
  }

  private void fit(JsonNode player) throws IOException {
    String team = player.get("team").asText();
    long already = fitted.stream().filter(other -> other.team().equals(team)).count();
    boolean passes = already < FITTED.getOrDefault(team, 0);
    boolean fails = !passes && !failed && team.equals(FAILING_TEAM);
    List<JsonNode> advice =
        DemoLoader.list(player.path("advice")).stream().filter(a -> !fails || tooTight(a)).toList();
    if (!passes && !fails || advice.isEmpty()) {
      return;
    }
    Helmet helmet = helmets.take(player.get("field").asText(), advice).orElse(null);
    if (helmet == null) {
      return;
    }
    if (fails) {
      fail(player, helmet);
      failed = true;
    } else {
      pass(player, helmet);
      String number = player.get("number").asText();
      fitted.add(new Fitted(number, team, player.get("field").asText(), helmet.tag()));
    }
  }

  private static boolean tooTight(JsonNode advice) {
    return advice.path("model").asText().equals(FAILING_MODEL)
        && advice.path("size").asText().equals(FAILING_SIZE);
  }

  private void pass(JsonNode player, Helmet helmet) throws IOException {
    String session = open(player, helmet);
    for (String check : checks) {
      post(player, session, "checks", Map.of("check", check, "result", "pass"));
    }
    post(player, session, "pass", Map.of("airCelsius", 24, "hair", "usual"));
  }

  private void fail(JsonNode player, Helmet helmet) throws IOException {
    String session = open(player, helmet);
    String snug =
        checks.stream().filter(id -> id.contains("snug")).findFirst().orElse(checks.getLast());
    post(player, session, "checks", Map.of("check", snug, "result", "fail", "finding", "tight"));
    post(player, session, "fail", Map.of());
  }

  /** The player and the helmet are news to fitting-service for a moment, hence the retries. */
  private String open(JsonNode player, Helmet helmet) throws IOException {
    String field = player.get("field").asText();
    JsonNode opened =
        retry.untilKnown(
            () ->
                http.post(
                    fitterOf(field),
                    "open-" + player.get("number").asText(),
                    "/fitting/api/sessions",
                    Map.of("player", player.get("player").asText(), "field", field)));
    String session = opened.get("session").asText();
    retry.untilKnown(
        () ->
            post(
                player,
                session,
                "helmet",
                Map.of("tag", helmet.tag(), "sizeLabel", helmet.size())));
    return session;
  }

  private JsonNode post(JsonNode player, String session, String path, Map<String, Object> body)
      throws IOException {
    return http.post(
        fitterOf(player.get("field").asText()),
        session + "/" + path + "/" + body.getOrDefault("check", ""),
        "/fitting/api/sessions/" + session + "/" + path,
        body);
  }

  static String fitterOf(String field) {
    return FITTERS.get(field);
  }
}
