package org.tapeline.stack.launch;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;

/** That a person asked everything to stop: also while it still starts. Only the first counts. */
final class StopRequest {
  private final Thread starting;
  private final AtomicBoolean wanted = new AtomicBoolean();
  private final CountDownLatch said = new CountDownLatch(1);

  /**
   * @param starting the thread that starts the parts, interrupted when the request comes
   */
  StopRequest(Thread starting) {
    this.starting = starting;
  }

  void now() {
    if (wanted.compareAndSet(false, true)) {
      starting.interrupt();
      said.countDown();
    }
  }

  boolean wanted() {
    return wanted.get();
  }

  /** Called by that thread: returns once somebody asked, with no interruption left over. */
  void await() {
    while (said.getCount() > 0) {
      try {
        said.await();
      } catch (InterruptedException e) {
        // The request itself interrupts; the loop waits until it is through.
      }
    }
    Thread.interrupted();
  }
}
