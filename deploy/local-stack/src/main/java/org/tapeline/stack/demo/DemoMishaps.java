package org.tapeline.stack.demo;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.tapeline.stack.demo.DemoSessions.Fitted;

/**
 * What befalls the demo's players after they were fitted: a crack is seen, two helmets are put on
 * hold, two players get another haircut. The rest happens by itself.
 */
final class DemoMishaps {
  /** The helmet of its last fitted player is reported damaged. */
  private static final String DAMAGED = "U10-HAWKS";

  /** The helmets of its first two fitted players are put on hold. */
  private static final String HELD = "U12-HERONS";

  /** Its first two fitted players get another haircut. */
  private static final String SHORN = "U8-OTTERS";

  private final DemoHttp http;
  private final DemoRetry retry = new DemoRetry();

  DemoMishaps(DemoHttp http) {
    this.http = http;
  }

  void run(List<Fitted> fitted) throws IOException {
    List<Fitted> hawks = of(fitted, DAMAGED);
    if (!hawks.isEmpty()) {
      damage(hawks.getLast().tag());
    }
    List<String> held = of(fitted, HELD).stream().limit(2).map(Fitted::tag).toList();
    if (!held.isEmpty()) {
      hold(held);
    }
    for (Fitted player : of(fitted, SHORN).stream().limit(2).toList()) {
      cutHair(player);
    }
  }

  private static List<Fitted> of(List<Fitted> fitted, String team) {
    return fitted.stream().filter(player -> player.team().equals(team)).toList();
  }

  private void damage(String tag) throws IOException {
    String path = "/inventory/api/helmets/" + tag + "/damage";
    retry.untilKnown(
        () ->
            http.post("manager", "damage-" + tag, path, Map.of("where", "shell", "what", "crack")));
  }

  private void hold(List<String> tags) throws IOException {
    http.post(
        "manager",
        "hold-" + tags.getFirst(),
        "/inventory/api/holds",
        Map.of("reason", "recall", "reference", "DEMO-1", "tags", String.join("\n", tags)));
  }

  private void cutHair(Fitted player) throws IOException {
    retry.untilKnown(
        () ->
            http.post(
                DemoSessions.fitterOf(player.field()),
                "hair-" + player.player(),
                "/fitting/api/hair-changes",
                Map.of("player", player.player(), "hair", "short")));
  }
}
