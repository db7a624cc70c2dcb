package org.tapeline.notify.channel;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jboss.logging.Logger;
import org.tapeline.journal.watch.JournalWatch;
import org.tapeline.notify.notice.DueBell;

/** Sends what is due on one channel, one after another, over a connection of its own. */
final class ChannelWorker implements Runnable {
  private static final Logger LOG = Logger.getLogger(ChannelWorker.class);
  private static final Duration BETWEEN = Duration.ofSeconds(1);

  private final Channel channel;
  private final Throttle throttle;
  private final DeliveryQueue queue;
  private final DeliveryNotes notes;
  private final TryCounts counts;
  private final JournalWatch watch;
  private final DueBell bell;
  private final BooleanSupplier stopping;

  ChannelWorker(
      Channel channel,
      Throttle throttle,
      DeliveryQueue queue,
      DeliveryNotes notes,
      TryCounts counts,
      JournalWatch watch,
      DueBell bell,
      BooleanSupplier stopping) {
    this.channel = channel;
    this.throttle = throttle;
    this.queue = queue;
    this.notes = notes;
    this.counts = counts;
    this.watch = watch;
    this.bell = bell;
    this.stopping = stopping;
  }

  @Override
  public void run() {
    try (Channel.Connection connection = channel.open()) {
      while (!stopping.getAsBoolean()) {
        long seen = bell.rings();
        Duration rest = sendOne(connection);
        if (rest.isPositive()) {
          bell.awaitMoreThan(seen, rest.compareTo(BETWEEN) > 0 ? BETWEEN : rest);
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** How long to rest before the next one. */
  private Duration sendOne(Channel.Connection connection) {
    Duration wait = throttle.ask();
    if (wait.isPositive()) {
      return wait;
    }
    Optional<Claim> claim = claim();
    if (claim.isEmpty()) {
      return BETWEEN;
    }
    try {
      String step = "send by " + channel.code();
      watch.step(step, claim.get().cause(), () -> deliver(claim.get(), connection));
    } catch (RuntimeException e) {
      LOG.warnf("The end of a try cannot be noted, it counts as cut off: %s", e);
    }
    return Duration.ZERO;
  }

  private Optional<Claim> claim() {
    Optional<Claim> claim = Optional.empty();
    try {
      claim = queue.claim(channel);
    } catch (RuntimeException e) {
      LOG.warnf("Due notices cannot be worked on, trying again: %s", e);
    } finally {
      if (claim.flatMap(Claim::message).isEmpty()) {
        throttle.giveBack();
      }
    }
    return claim;
  }

  /** The claim, once its end is noted. */
  private Claim deliver(Claim claim, Channel.Connection connection) {
    if (claim.message().isEmpty()) {
      notes.noteNobody(claim);
      return claim;
    }
    long started = System.nanoTime();
    SendOutcome outcome = connection.send(claim.message().get());
    Duration took = Duration.ofNanos(System.nanoTime() - started);
    throttle.answered(outcome, took);
    counts.count(channel, outcome, took);
    notes.note(claim, channel, outcome);
    if (!(outcome instanceof SendOutcome.Taken)) {
      LOG.warnf("Notice %s, try %d: %s", claim.notice(), claim.attempt(), outcome);
    }
    return claim;
  }
}
