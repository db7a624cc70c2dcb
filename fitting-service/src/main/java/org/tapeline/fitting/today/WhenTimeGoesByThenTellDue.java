package org.tapeline.fitting.today;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.signoff.SignOffRow;
import org.tapeline.journal.Transactions;

/**
 * Looks now and then at all sign-offs. For telling only: what the lists show is worked out when
 * they are asked for, whether this runs or not.
 */
@ApplicationScoped
public class WhenTimeGoesByThenTellDue {
  private static final int AT_A_TIME = 500;

  private final DueChecks due;
  private final Transactions transactions;

  WhenTimeGoesByThenTellDue(DueChecks due, Transactions transactions) {
    this.due = due;
    this.transactions = transactions;
  }

  @Scheduled(
      every = "{tapeline.recheck.look}",
      delayed = "1m",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  public void lookAtAll() {
    List<UUID> players =
        transactions.required(c -> SignOffRow.allLive().stream().map(row -> row.player).toList());
    for (int from = 0; from < players.size(); from += AT_A_TIME) {
      List<UUID> some = players.subList(from, Math.min(from + AT_A_TIME, players.size()));
      transactions.required(c -> due.withNews(SignOffRow.liveOf(some))).forEach(this::look);
    }
  }

  /** Each by itself: what goes wrong with one holds up no other for longer than till next time. */
  private void look(UUID player) {
    transactions.required(
        c -> {
          due.look(player, Optional.empty());
          return player;
        });
  }
}
