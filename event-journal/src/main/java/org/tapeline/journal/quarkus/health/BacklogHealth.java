package org.tapeline.journal.quarkus.health;

import io.smallrye.health.api.Wellness;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.TreeMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.HealthCheckResponseBuilder;
import org.tapeline.journal.backlog.Backlog;
import org.tapeline.journal.backlog.Backlogs;
import org.tapeline.journal.relay.Relay;

/** Not well when events are parked, which waits for a person, or are not sent for long. */
@Wellness
@ApplicationScoped
class BacklogHealth implements HealthCheck {
  private final Backlogs backlogs;
  private final Relay relay;
  private final Clock clock;
  private final Duration longest;

  BacklogHealth(
      Backlogs backlogs,
      Relay relay,
      Clock clock,
      @ConfigProperty(name = "tapeline.health.unsent-at-most", defaultValue = "PT30S")
          Duration longest) {
    this.backlogs = backlogs;
    this.relay = relay;
    this.clock = clock;
    this.longest = longest;
  }

  @Override
  public HealthCheckResponse call() {
    HealthCheckResponseBuilder response =
        HealthCheckResponse.named("events sent and applied")
            .withData("thisCopySends", relay.leading());
    try {
      Backlog backlog = backlogs.now();
      Instant now = clock.instant();
      boolean late =
          backlog.oldestUnsent().filter(at -> at.plus(longest).isBefore(now)).isPresent();
      response
          .status(!late && backlog.parked().isEmpty())
          .withData("unsent", backlog.unsent())
          .withData("oldestUnsent", backlog.oldestUnsent().map(Instant::toString).orElse("none"))
          .withData("parked", backlog.parkedInAll());
      new TreeMap<>(backlog.parked())
          .forEach((topic, records) -> response.withData("parked " + topic, records));
    } catch (RuntimeException e) {
      // What it says is for the log: who asks for health need not be signed in.
      response.down().withData("database", "out of reach");
    }
    return response.build();
  }
}
