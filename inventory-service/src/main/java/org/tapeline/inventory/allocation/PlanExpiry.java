package org.tapeline.inventory.allocation;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** Looks once a minute for plans that have kept helmets too long. */
@ApplicationScoped
public class PlanExpiry {
  private final PlanRelease release;
  private final Transactions transactions;

  PlanExpiry(PlanRelease release, Transactions transactions) {
    this.release = release;
    this.transactions = transactions;
  }

  @Scheduled(every = "60s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  public void look() {
    transactions.required(
        c -> {
          release.expired(Cause.command(UuidV7.next()));
          release.arrivedSpares(Cause.command(UuidV7.next()).step("spares-arrived"));
          return null;
        });
  }
}
