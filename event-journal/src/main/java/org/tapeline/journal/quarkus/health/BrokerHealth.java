package org.tapeline.journal.quarkus.health;

import io.smallrye.health.api.Wellness;
import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.tapeline.journal.inbox.FreshnessProbe;

/**
 * Whether the broker answers. Without it everything that people enter is kept and sent later, so
 * that this is no reason to keep them out.
 */
@Wellness
@ApplicationScoped
class BrokerHealth implements HealthCheck {
  private final FreshnessProbe freshness;

  BrokerHealth(FreshnessProbe freshness) {
    this.freshness = freshness;
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("broker").status(freshness.brokerAnswers()).build();
  }
}
