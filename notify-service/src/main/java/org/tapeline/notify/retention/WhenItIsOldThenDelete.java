package org.tapeline.notify.retention;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/** Once a day deletes what is old, in small transactions that hold nobody up. */
@ApplicationScoped
public class WhenItIsOldThenDelete {
  static final String CONTACTS = "contacts of who left";

  private final RetentionPolicy policy;
  private final RetentionRuns runs;
  private final GoneFamilies families;
  private final Clock clock;

  WhenItIsOldThenDelete(
      RetentionPolicy policy, RetentionRuns runs, GoneFamilies families, Clock clock) {
    this.policy = policy;
    this.runs = runs;
    this.families = families;
    this.clock = clock;
  }

  @Scheduled(
      cron = "{tapeline.retention.at}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void daily() {
    runAsOf(clock.instant());
  }

  /** Deletes what is old at a time. */
  public void runAsOf(Instant now) {
    Instant started = clock.instant().truncatedTo(ChronoUnit.MILLIS);
    for (Keeping keeping : Keeping.of(policy)) {
      Instant before = now.minus(keeping.keptFor());
      while (runs.delete(started, keeping, before, policy.batch()) == policy.batch()) {
        Thread.yield();
      }
    }
    Instant before = now.minus(policy.contactsOfWhoLeft());
    int people = families.delete(before, policy.batch());
    while (people > 0) {
      runs.count(started, CONTACTS, before, people);
      people = families.delete(before, policy.batch());
    }
  }
}
