package org.tapeline.journal.quarkus;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.apache.kafka.clients.admin.Admin;
import org.apache.kafka.common.KafkaException;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.inbox.PeerHeartbeats;
import org.tapeline.journal.kafka.Topics;
import org.tapeline.journal.relay.Relay;

/** Starts the relay and the consumer with the service and stops them with it. */
@ApplicationScoped
class JournalLifecycle {
  private static final Logger LOG = System.getLogger(JournalLifecycle.class.getName());
  private static final Duration BETWEEN = Duration.ofSeconds(1);

  private final JournalSettings settings;
  private final Subscription subscription;
  private final Relay relay;
  private final InboxConsumer consumer;
  private final FreshnessProbe freshness;
  private final PeerHeartbeats heartbeats;
  private final CountDownLatch stopping = new CountDownLatch(1);
  private final CountDownLatch begun = new CountDownLatch(1);
  private final Thread thread =
      Thread.ofPlatform().name("journal-start").daemon().unstarted(this::begin);

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

  /**
   * Waits a while for the broker, so that the service begins with all its parts; without it the
   * service starts all the same: people can enter what they did, and it is kept.
   */
  void start(@Observes StartupEvent event, Serving serving) throws InterruptedException {
    if (!serving.here()) {
      return;
    }
    thread.start();
    if (!begun.await(settings.waitForBroker.toMillis(), TimeUnit.MILLISECONDS)) {
      LOG.log(Level.WARNING, "Starting without Kafka; nothing is sent or heard until it is there");
    }
  }

  private void begin() {
    try {
      while (!topicsAreThere()) {
        if (stopping.await(BETWEEN.toMillis(), TimeUnit.MILLISECONDS)) {
          return;
        }
      }
      relay.start();
      consumer.start();
      heartbeats.start();
      freshness.start();
      begun.countDown();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private boolean topicsAreThere() throws InterruptedException {
    Set<String> topics = new HashSet<>(subscription.topics());
    topics.add(Topics.of(settings.service));
    topics.add(Topics.PEOPLE);
    topics.add(Topics.HEARTBEATS);
    try {
      Admin admin = settings.kafka().admin();
      try {
        Topics.make(admin, topics, settings.partitions, settings.replication);
        return true;
      } finally {
        admin.close(BETWEEN);
      }
    } catch (TimeoutException | IllegalStateException | KafkaException e) {
      LOG.log(Level.WARNING, "Kafka is out of reach, will try again: {0}", e.toString());
      return false;
    }
  }

  void stop(@Observes ShutdownEvent event) {
    if (thread.getState() == Thread.State.NEW) {
      return;
    }
    stopping.countDown();
    thread.interrupt();
    consumer.close();
    relay.close();
    freshness.close();
    heartbeats.close();
  }
}
