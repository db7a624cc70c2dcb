package org.tapeline.journal.quarkus.health;

import io.smallrye.health.api.HealthGroup;
import io.smallrye.health.api.Wellness;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.HealthCheckResponseBuilder;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.PeerHeartbeats;

/**
 * Whether the service knows what its peers said, so that what it answers about them holds now.
 * Every copy of a service reads the same database: when one lags all do, so it is asked for apart
 * from readiness.
 */
@Wellness
@HealthGroup("answers")
@ApplicationScoped
class PictureHealth implements HealthCheck {
  private final FreshnessProbe freshness;
  private final PeerHeartbeats heartbeats;
  private final Clock clock;
  private final Duration oldest;

  PictureHealth(
      FreshnessProbe freshness,
      PeerHeartbeats heartbeats,
      Clock clock,
      @ConfigProperty(name = "tapeline.health.oldest-picture", defaultValue = "PT10S")
          Duration oldest) {
    this.freshness = freshness;
    this.heartbeats = heartbeats;
    this.clock = clock;
    this.oldest = oldest;
  }

  @Override
  public HealthCheckResponse call() {
    Instant now = clock.instant();
    Optional<Instant> known = freshness.caughtUpAt();
    HealthCheckResponseBuilder response =
        HealthCheckResponse.named("picture of the peers")
            .status(known.filter(at -> !at.plus(oldest).isBefore(now)).isPresent())
            .withData("knownUpTo", known.map(Instant::toString).orElse("not yet"));
    new TreeMap<>(freshness.behind())
        .forEach((topic, records) -> response.withData("behind " + topic, records));
    heartbeats.peers().stream()
        .sorted()
        .forEach(
            peer ->
                response.withData(
                    "sent everything up to, " + peer,
                    Optional.ofNullable(heartbeats.heard().get(peer))
                        .map(Instant::toString)
                        .orElse("not heard")));
    return response.build();
  }
}
