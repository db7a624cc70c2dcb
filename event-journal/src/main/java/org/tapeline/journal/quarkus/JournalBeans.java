package org.tapeline.journal.quarkus;

import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.inject.Instance;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import jakarta.persistence.EntityManager;
import jakarta.transaction.TransactionSynchronizationRegistry;
import java.time.Clock;
import javax.sql.DataSource;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.CurrentState;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Journal;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.backlog.Backlogs;
import org.tapeline.journal.chain.Chains;
import org.tapeline.journal.command.PostgresCommandLog;
import org.tapeline.journal.inbox.FreshnessProbe;
import org.tapeline.journal.inbox.Inbox;
import org.tapeline.journal.inbox.InboxConsumer;
import org.tapeline.journal.inbox.ParkedEvents;
import org.tapeline.journal.inbox.PeerHeartbeats;
import org.tapeline.journal.kafka.KafkaClients;
import org.tapeline.journal.kafka.Topics;
import org.tapeline.journal.quarkus.log.CorrelatedLog;
import org.tapeline.journal.quarkus.metrics.CountingWatch;
import org.tapeline.journal.quarkus.trace.Traces;
import org.tapeline.journal.rebuild.Rebuild;
import org.tapeline.journal.relay.Heartbeat;
import org.tapeline.journal.relay.Relay;
import org.tapeline.journal.state.PostgresCurrentState;
import org.tapeline.journal.store.PostgresJournal;
import org.tapeline.journal.watch.JournalWatch;
import org.tapeline.journal.watch.WatchedCommands;
import org.tapeline.journal.watch.WatchedJournal;

/** The journal's parts as beans of the service. */
@Singleton
class JournalBeans {

  @Produces
  @Singleton
  @DefaultBean
  Clock clock() {
    return Clock.systemUTC();
  }

  @Produces
  @Singleton
  Transactions transactions(
      DataSource source,
      TransactionSynchronizationRegistry registry,
      Instance<EntityManager> entities) {
    return new JtaTransactions(source, registry, entities);
  }

  @Produces
  @Singleton
  JournalWatch watch(MeterRegistry registry, Traces traces) {
    return traces.watch().around(new CorrelatedLog().around(new CountingWatch(registry)));
  }

  @Produces
  @Singleton
  Relay relay(JournalSettings settings, Clock clock, JournalWatch watch) {
    KafkaClients kafka = settings.kafka();
    return new Relay(
        settings.dedicatedConnections(),
        kafka::producer,
        Topics.of(settings.service),
        new Heartbeat(settings.service, settings.heartbeat, clock),
        watch);
  }

  @Produces
  @Singleton
  Journal journal(
      JournalSettings settings,
      Transactions transactions,
      EventTypes types,
      Clock clock,
      Relay relay,
      JournalWatch watch) {
    settings.written.ifPresent(older -> older.forEach(types::writing));
    return new WatchedJournal(
        new PostgresJournal(transactions, types, clock, relay::wake), transactions, watch);
  }

  @Produces
  @Singleton
  CurrentState currentState(Transactions transactions, Clock clock, Relay relay) {
    return new PostgresCurrentState(transactions, clock, relay::wake);
  }

  @Produces
  @Singleton
  CommandLog commandLog(Transactions transactions, Clock clock, JournalWatch watch) {
    return new WatchedCommands(new PostgresCommandLog(transactions, clock), watch);
  }

  @Produces
  @Singleton
  Inbox inbox(
      Transactions transactions, Subscription subscription, Clock clock, JournalWatch watch) {
    return new Inbox(transactions, subscription, clock, watch);
  }

  @Produces
  @Singleton
  InboxConsumer consumer(JournalSettings settings, Subscription subscription, Inbox inbox) {
    KafkaClients kafka = settings.kafka();
    return new InboxConsumer(
        () -> kafka.consumer(group(subscription)), subscription.topics(), inbox, settings.readers);
  }

  @Produces
  @Singleton
  PeerHeartbeats heartbeats(JournalSettings settings, Subscription subscription) {
    KafkaClients kafka = settings.kafka();
    return new PeerHeartbeats(
        () -> kafka.consumer(group(subscription) + "-heartbeats"),
        PeerHeartbeats.writersOf(subscription.topics()));
  }

  @Produces
  @Singleton
  FreshnessProbe freshness(
      JournalSettings settings, Subscription subscription, PeerHeartbeats heartbeats, Clock clock) {
    return new FreshnessProbe(
        settings.kafka()::admin,
        group(subscription),
        subscription.topics(),
        heartbeats::allSentAt,
        clock);
  }

  @Produces
  @Singleton
  ParkedEvents parkedEvents(Transactions transactions, Inbox inbox) {
    return new ParkedEvents(transactions, inbox);
  }

  @Produces
  @Singleton
  Backlogs backlogs(Transactions transactions) {
    return new Backlogs(transactions);
  }

  @Produces
  @Singleton
  Rebuild rebuild(JournalSettings settings, Transactions transactions, EventTypes types) {
    KafkaClients kafka = settings.kafka();
    return new Rebuild(
        transactions,
        settings.dedicatedConnections(),
        types,
        () -> kafka.consumer("tapeline-" + settings.service + "-rebuild"));
  }

  @Produces
  @Singleton
  Chains chains(JournalSettings settings, Transactions transactions) {
    return new Chains(settings.service, transactions);
  }

  private static String group(Subscription subscription) {
    return "tapeline-" + subscription.name();
  }
}
