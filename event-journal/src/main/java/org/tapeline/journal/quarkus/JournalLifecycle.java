package org.tapeline.journal.quarkus;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import org.apache.kafka.clients.admin.Admin;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.inbox.PeerHeartbeats;
import org.tapeline.journal.kafka.Topics;
import org.tapeline.journal.relay.Relay;

/** Starts the relay and the consumer with the service and stops them with it. */
@ApplicationScoped
class JournalLifecycle {
  private final JournalSettings settings;
  private final Subscription subscription;
  private final Relay relay;
  private final InboxConsumer consumer;
  private final FreshnessProbe freshness;
  private final PeerHeartbeats heartbeats;

  JournalLifecycle(
      JournalSettings settings,
      Subscription subscription,
      Relay relay,
      InboxConsumer consumer,
      FreshnessProbe freshness,
      PeerHeartbeats heartbeats) {
    this.heartbeats = heartbeats;
    this.settings = settings;
    this.subscription = subscription;
    this.relay = relay;
    this.consumer = consumer;
    this.freshness = freshness;
  }

  void start(@Observes StartupEvent event) throws InterruptedException, TimeoutException {
    Set<String> topics = new HashSet<>(subscription.topics());
    topics.add(Topics.of(settings.service));
    topics.add(Topics.PEOPLE);
    topics.add(Topics.HEARTBEATS);
    try (Admin admin = settings.kafka().admin()) {
      Topics.make(admin, topics, settings.partitions, settings.replication);
    }
    relay.start();
    consumer.start();
    heartbeats.start();
    freshness.start();
  }

  void stop(@Observes ShutdownEvent event) {
    consumer.close();
    relay.close();
    freshness.close();
    heartbeats.close();
  }
}
