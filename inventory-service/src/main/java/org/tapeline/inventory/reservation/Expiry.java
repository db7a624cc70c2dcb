package org.tapeline.inventory.reservation;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** Looks once a minute for what has been kept too long. */
@ApplicationScoped
public class Expiry {
  private final Reservations reservations;
  private final Transactions transactions;

  Expiry(Reservations reservations, Transactions transactions) {
    this.reservations = reservations;
    this.transactions = transactions;
  }

  @Scheduled(every = "60s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  public void look() {
    transactions.required(
        c -> {
          reservations.expire(Cause.command(UuidV7.next()));
          return null;
        });
  }
}
