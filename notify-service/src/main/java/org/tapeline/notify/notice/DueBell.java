package org.tapeline.notify.notice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/** Rung after a commit that made a notice due, so that the sender need not look in vain. */
@ApplicationScoped
public class DueBell {
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition rung = lock.newCondition();
  private long rings;

  public void ring() {
    lock.lock();
    try {
      rings++;
      rung.signalAll();
    } finally {
      lock.unlock();
    }
  }

  /** How often it was rung so far; taken before looking, so that no ring is missed. */
  public long rings() {
    lock.lock();
    try {
      return rings;
    } finally {
      lock.unlock();
    }
  }

  /** Waits until it has been rung more often than this, or the time is over. */
  public void awaitMoreThan(long seen, Duration atMost) throws InterruptedException {
    lock.lock();
    try {
      long left = atMost.toNanos();
      while (rings <= seen && left > 0) {
        left = rung.awaitNanos(left);
      }
    } finally {
      lock.unlock();
    }
  }
}
