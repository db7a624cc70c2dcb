package org.tapeline.inventory.hold;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.tapeline.journal.quarkus.Serving;

/**
 * Brings holds into the helmets' records, batch by batch, until nothing is left. Where it stands is
 * in the database alone: it can be ended at any point and goes on from there.
 */
@ApplicationScoped
public class HoldRunner {
  private static final Logger LOG = System.getLogger(HoldRunner.class.getName());
  private static final Duration LOOK_AGAIN = Duration.ofSeconds(2);
  private static final Duration ENDS_WITHIN = Duration.ofSeconds(20);

  private final HoldBatches batches;
  private final Semaphore bell = new Semaphore(0);
  private volatile Thread thread;

  HoldRunner(HoldBatches batches) {
    this.batches = batches;
  }

  void begin(@Observes StartupEvent event, Serving serving) {
    if (serving.here()) {
      start();
    }
  }

  void end(@Observes ShutdownEvent event) {
    stop();
  }

  public synchronized void start() {
    if (thread == null) {
      // Named before it starts: it goes on only as long as it is the one that is named.
      thread = Thread.ofPlatform().name("holds").daemon().unstarted(this::run);
      thread.start();
    }
  }

  /** Returns once the batch that is under way has ended. */
  public synchronized void stop() {
    Thread running = thread;
    thread = null;
    wake();
    try {
      if (running != null) {
        running.join(ENDS_WITHIN);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** There may be something to do. Cheap, from any thread. */
  void wake() {
    if (bell.availablePermits() == 0) {
      bell.release();
    }
  }

  private void run() {
    while (thread == Thread.currentThread()) {
      if (!doneSome()) {
        rest();
      }
    }
  }

  private boolean doneSome() {
    try {
      return batches.next();
    } catch (RuntimeException e) {
      LOG.log(Level.WARNING, "A batch of a hold failed, its helmets one by one: {0}", e.toString());
      return oneByOne("due") | oneByOne("freeing");
    }
  }

  /** So that a helmet of which the record cannot be written holds up no other. */
  private boolean oneByOne(String step) {
    boolean some = false;
    int failed = 0;
    while (thread == Thread.currentThread()) {
      try {
        if (!batches.batch(step, 1, failed)) {
          return some;
        }
        some = true;
      } catch (RuntimeException e) {
        LOG.log(Level.WARNING, "A helmet of a hold will be tried again: {0}", e.toString());
        failed++;
      }
    }
    return some;
  }

  private void rest() {
    try {
      bell.tryAcquire(LOOK_AGAIN.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      thread = null;
    }
  }
}
