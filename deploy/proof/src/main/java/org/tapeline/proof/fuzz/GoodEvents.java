package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;

/** After all that: can somebody still be fitted, and does a damage report reach every service? */
final class GoodEvents {
  private static final Set<String> CHAIN = Set.of("inventory", "fitting", "notify");
  private static final Duration AGAIN = Duration.ofMillis(500);

  private final Target target;
  private final Duration patience;

  GoodEvents(Target target, Duration patience) {
    this.target = target;
    this.patience = patience;
  }

  /** What does not flow; empty when all does. */
  Optional<String> stuck() throws InterruptedException {
    try {
      UUID report = damaged(new OwnFit(target, patience).signedOff());
      Set<String> reached = reachedBy(report);
      return reached.containsAll(CHAIN)
          ? Optional.empty()
          : Optional.of("a damage report reached only " + reached);
    } catch (IOException e) {
      return Optional.of("no new player could be fitted: " + e.getMessage());
    }
  }

  private UUID damaged(String tag) throws IOException {
    return target.post(
        "/inventory/api/helmets/" + tag + "/damage",
        "application/json",
        "{\"where\":\"shell\",\"what\":\"crack\"}");
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
