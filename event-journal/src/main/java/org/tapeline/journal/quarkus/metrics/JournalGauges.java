package org.tapeline.journal.quarkus.metrics;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Tags;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.function.Supplier;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.relay.Relay;

/**
 * What the journal's threads know anyway. A scrape reads memory; what cannot be told is "not a
 * number", never an old figure.
 */
@ApplicationScoped
class JournalGauges {
  private final MeterRegistry registry;
  private final Subscription subscription;
  private final FreshnessProbe freshness;
  private final Relay relay;
  private final Clock clock;
  private final Instant started;

  JournalGauges(
      MeterRegistry registry,
      Subscription subscription,
      FreshnessProbe freshness,
      Relay relay,
      Clock clock) {
    this.registry = registry;
    this.subscription = subscription;
    this.freshness = freshness;
    this.relay = relay;
    this.clock = clock;
    this.started = clock.instant();
  }

  void register(@Observes StartupEvent event) {
    for (String topic : subscription.topics()) {
      Gauge.builder("tapeline.inbox.lag.records", () -> freshness.behind().get(topic))
          .description("Records of a topic that the service, all copies together, has yet to apply")
          .tags(Tags.of("topic", topic))
          .register(registry);
    }
    Gauge.builder("tapeline.inbox.picture.age", this::pictureAge)
        .description("How old is what is known of the peers; at first, since the start")
        .baseUnit("seconds")
        .register(registry);
    flag("tapeline.broker.reachable", "1 when Kafka answers", freshness::brokerAnswers);
    flag("tapeline.relay.leading", "1 in the copy that sends to Kafka", relay::leading);
  }

  private void flag(String name, String description, Supplier<Boolean> fact) {
    Gauge.builder(name, () -> fact.get() ? 1 : 0).description(description).register(registry);
  }

  private double pictureAge() {
    Instant known = freshness.caughtUpAt().orElse(started);
    return Duration.between(known, clock.instant()).toMillis() / 1000.0;
  }
}
