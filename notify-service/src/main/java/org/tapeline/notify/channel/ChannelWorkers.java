package org.tapeline.notify.channel;

import io.quarkus.arc.All;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jboss.logging.Logger;
import org.tapeline.journal.quarkus.Serving;
import org.tapeline.journal.watch.JournalWatch;
import org.tapeline.notify.notice.DueBell;

/**
 * Runs the workers of all channels. They are woken when a notice is raised and look by themselves
 * every second for those whose wait is over or whose try was cut off. Platform threads: the mail
 * library blocks inside synchronized code, which pins a virtual thread on the older JDKs.
 */
@ApplicationScoped
public class ChannelWorkers {
  /** After everything that the work needs has started. */
  private static final int LAST = Integer.MAX_VALUE;

  private static final Logger LOG = Logger.getLogger(ChannelWorkers.class);
  private static final Duration STOPPING = Duration.ofSeconds(5);

  private final List<Channel> channels;
  private final DeliveryQueue queue;
  private final DeliveryNotes notes;
  private final TryCounts counts;
  private final JournalWatch watch;
  private final WaitingNotices waiting;
  private final DueBell bell;
  private final Clock clock;
  private final Map<Channel, Throttle> throttles = new ConcurrentHashMap<>();
  private final List<Thread> threads = new ArrayList<>();
  private volatile boolean stopping;

  ChannelWorkers(
      @All List<Channel> channels,
      DeliveryQueue queue,
      DeliveryNotes notes,
      TryCounts counts,
      JournalWatch watch,
      WaitingNotices waiting,
      DueBell bell,
      Clock clock) {
    this.channels = channels;
    this.queue = queue;
    this.notes = notes;
    this.counts = counts;
    this.watch = watch;
    this.waiting = waiting;
    this.bell = bell;
    this.clock = clock;
  }

  void start(@Observes @Priority(LAST) StartupEvent event, Serving serving) {
    if (!serving.here()) {
      return;
    }
    channels.stream().filter(Channel::on).forEach(this::start);
  }

  private void start(Channel channel) {
    ChannelLimits limits = channel.limits();
    Throttle throttle =
        new Throttle(channel.code(), limits.perSecond(), limits.restWhenDown(), clock);
    throttles.put(channel, throttle);
    for (int i = 1; i <= limits.connections(); i++) {
      threads.add(
          Thread.ofPlatform()
              .name(channel.code() + "-" + i)
              .daemon()
              .start(
                  new ChannelWorker(
                      channel, throttle, queue, notes, counts, watch, bell, () -> stopping)));
    }
  }

  /** Whether the channel rests since it failed; one that is not set up does not. */
  boolean resting(Channel channel) {
    Throttle throttle = throttles.get(channel);
    return throttle != null && throttle.resting();
  }

  /** Nobody waits for a channel that rests longer than the urgency allows. */
  @Scheduled(every = "5s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void look() {
    for (Channel channel : channels) {
      Throttle throttle = throttles.get(channel);
      try {
        if (!channel.on()) {
          waiting.takeOff(channel);
        } else if (throttle != null && throttle.resting()) {
          waiting.moveOn(channel);
        }
      } catch (RuntimeException e) {
        LOG.warnf("Waiting notices could not be looked at, trying again: %s", e);
      }
    }
  }

  /** A try that runs is let end, so that its outcome is noted. */
  void stop(@Observes ShutdownEvent event) throws InterruptedException {
    stopping = true;
    bell.ring();
    for (Thread thread : threads) {
      thread.join(STOPPING);
    }
  }
}
