package org.tapeline.journal.quarkus;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.relay.Relay;

/** Ready once the consumer runs and has been level with its topics at least once. */
@Readiness
@ApplicationScoped
class JournalHealth implements HealthCheck {
  private final InboxConsumer consumer;
  private final FreshnessProbe freshness;
  private final Relay relay;

  JournalHealth(InboxConsumer consumer, FreshnessProbe freshness, Relay relay) {
    this.consumer = consumer;
    this.freshness = freshness;
    this.relay = relay;
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("journal")
        .status(consumer.alive() && freshness.wasLevel())
        .withData("caughtUpAt", freshness.caughtUpAt().map(Object::toString).orElse("never"))
        .withData("relayLeads", relay.leading())
        .build();
  }
}
