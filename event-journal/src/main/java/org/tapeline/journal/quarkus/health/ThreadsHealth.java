package org.tapeline.journal.quarkus.health;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Liveness;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.relay.Relay;

/**
 * The threads that read and send go on after every failure; one that has ended nevertheless is
 * brought back by nothing but a new process. Servers that are out of reach are not its matter.
 */
@Liveness
@ApplicationScoped
class ThreadsHealth implements HealthCheck {
  private final InboxConsumer consumer;
  private final FreshnessProbe freshness;
  private final Relay relay;

  ThreadsHealth(InboxConsumer consumer, FreshnessProbe freshness, Relay relay) {
    this.consumer = consumer;
    this.freshness = freshness;
    this.relay = relay;
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("journal threads")
        .status(consumer.alive() && freshness.alive() && relay.alive())
        .withData("reading", consumer.alive())
        .withData("looking how far", freshness.alive())
        .withData("sending", relay.alive())
        .build();
  }
}
