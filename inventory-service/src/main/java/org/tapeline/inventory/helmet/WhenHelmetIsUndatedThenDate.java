package org.tapeline.inventory.helmet;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetCommand.Recertify;
import org.tapeline.inventory.policy.HelmetPolicyFile;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/**
 * A helmet that was taken in before there was a policy may have no last day: it gets the policy's,
 * so that no helmet is worn for ever because nobody read its label.
 */
@ApplicationScoped
public class WhenHelmetIsUndatedThenDate {
  private static final int AT_ONCE = 200;

  private final HelmetDesk desk;
  private final Database database;
  private final Transactions transactions;
  private final HelmetPolicyFile policy;
  private final Clock clock;

  WhenHelmetIsUndatedThenDate(
      HelmetDesk desk,
      Database database,
      Transactions transactions,
      HelmetPolicyFile policy,
      Clock clock) {
    this.desk = desk;
    this.database = database;
    this.transactions = transactions;
    this.policy = policy;
    this.clock = clock;
  }

  /** One without a date. */
  private record Undated(String tag, String model, LocalDate manufacturedOn) {}

  @Scheduled(every = "60s", concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  public void look() {
    transactions.required(
        c -> {
          undated().forEach(this::date);
          return null;
        });
  }

  private List<Undated> undated() {
    return database.list(
        """
        select tag, model, manufactured_on from helmet
         where certified_until is null and manufactured_on is not null and state <> 'retired'
         order by tag limit\s\
        """
            + AT_ONCE,
        row -> new Undated(row.getString(1), row.getString(2), row.getObject(3, LocalDate.class)));
  }

  private void date(Undated h) {
    LocalDate until =
        policy
            .get()
            .usableUntil(h.model(), h.manufacturedOn(), Optional.empty(), h.manufacturedOn());
    desk.run(
        h.tag(),
        new Recertify(until, "policy", "tapeline", clock.instant()),
        Cause.command(UuidV7.next()));
  }
}
