package org.tapeline.proof.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;

/** After all that: does what somebody does still reach every service? */
final class GoodEvents {
  private static final Set<String> CHAIN = Set.of("inventory", "fitting", "notify");
  private static final int TRIES = 4;
  private static final Duration AGAIN = Duration.ofMillis(500);

  private final Target target;
  private final Duration patience;

  GoodEvents(Target target, Duration patience) {
    this.target = target;
    this.patience = patience;
  }

  /** What does not flow; empty when all does. */
  Optional<String> stuck() throws IOException, InterruptedException {
    Optional<String> player = newPlayerIsKnown();
    return player.isPresent() ? player : damageIsTold();
  }

  /** A player who is enrolled at sizing can be fitted. */
  private Optional<String> newPlayerIsKnown() throws IOException, InterruptedException {
    String number = "FZ-" + Long.toString(System.nanoTime(), 36).toUpperCase(java.util.Locale.ROOT);
    String csv =
        "player_number,given_name,family_name,birth_date,sex,team,field,guardian_name,"
            + "guardian_email,guardian_phone,guardian_language,guardian2_name,guardian2_email,"
            + "guardian2_phone,guardian2_language\n"
            + number
            + ",Wren,Afterwards,2015-03-01,f,U12-HERONS,NORTH,Robin Afterwards,"
            + "afterwards@example.org,,en,,,,\n";
    target.post("/sizing/api/import/players", "text/csv", csv);
    String player = target.get("/sizing/api/players/" + number).path("player").asText();
    Instant until = Instant.now().plus(patience);
    while (Instant.now().isBefore(until)) {
      if (answers("/fitting/api/players/" + player)) {
        return Optional.empty();
      }
      Thread.sleep(AGAIN);
    }
    return Optional.of("a player enrolled at sizing is not known at fitting");
  }

  private boolean answers(String path) {
    try {
      target.get(path);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  /** A worn helmet that is damaged withdraws a sign-off and is told to somebody. */
  private Optional<String> damageIsTold() throws IOException, InterruptedException {
    List<String> worn = new ArrayList<>();
    for (JsonNode helmet : target.get("/inventory/api/helmets?state=issued")) {
      if (worn.size() < TRIES && mayBeWorn(helmet.path("player").asText())) {
        worn.add(helmet.path("tag").asText());
      }
    }
    Set<String> reached = Set.of();
    for (String tag : worn) {
      UUID command =
          target.post(
              "/inventory/api/helmets/" + tag + "/damage",
              "application/json",
              "{\"where\":\"shell\",\"what\":\"crack\"}");
      reached = reachedBy(command);
      if (reached.containsAll(CHAIN)) {
        return Optional.empty();
      }
    }
    return Optional.of(
        worn.isEmpty()
            ? "nobody may wear a helmet any more, so that no damage could be tried"
            : "a damage report reached only " + reached);
  }

  /** Of one who left, or is out of play already, nobody is told anew. */
  private boolean mayBeWorn(String player) throws InterruptedException {
    try {
      JsonNode known = target.get("/fitting/api/players/" + player);
      return known.path("number").isTextual()
          && known.at("/state/code").asText().equals("may-wear");
    } catch (IOException e) {
      return false;
    }
  }

  private Set<String> reachedBy(UUID command) throws IOException, InterruptedException {
    Set<String> services = new TreeSet<>();
    Instant until = Instant.now().plus(patience);
    while (Instant.now().isBefore(until) && !services.containsAll(CHAIN)) {
      target
          .get("/chains/" + command)
          .path("events")
          .forEach(event -> services.add(event.path("service").asText()));
      Thread.sleep(AGAIN);
    }
    return services;
  }
}
