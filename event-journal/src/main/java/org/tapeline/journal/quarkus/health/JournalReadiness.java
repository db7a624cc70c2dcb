package org.tapeline.journal.quarkus.health;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.eclipse.microprofile.health.Startup;
import org.tapeline.journal.inbox.FreshnessProbe;

/**
 * Ready once everything that was in Kafka at some moment has been applied, so that whoever comes to
 * a fresh copy of the service is not told "not known" while another copy knows; but not for longer
 * than a while: people must be able to enter what they did, also when the broker is away or there
 * is much to catch up with. A lag that comes later never makes it unready; whoever needs a fresh
 * picture asks for the {@code answers}.
 */
@Readiness
@Startup
@ApplicationScoped
class JournalReadiness implements HealthCheck {
  private final FreshnessProbe freshness;
  private final Clock clock;
  private final Duration wait;
  private final Instant started;

  JournalReadiness(
      FreshnessProbe freshness,
      Clock clock,
      @ConfigProperty(name = "tapeline.health.catch-up-at-most", defaultValue = "PT2M")
          Duration wait) {
    this.freshness = freshness;
    this.clock = clock;
    this.wait = wait;
    this.started = clock.instant();
  }

  @Override
  public HealthCheckResponse call() {
    boolean waitedLongEnough = !clock.instant().isBefore(started.plus(wait));
    return HealthCheckResponse.named("caught up once")
        .status(freshness.wasLevel() || waitedLongEnough)
        .withData("caughtUp", freshness.wasLevel())
        .build();
  }
}
