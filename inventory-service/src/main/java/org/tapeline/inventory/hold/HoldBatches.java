package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.allocation.Plans;
import org.tapeline.inventory.helmet.HelmetBatch;
import org.tapeline.inventory.helmet.HelmetCommand.Free;
import org.tapeline.inventory.helmet.HelmetCommand.Hold;
import org.tapeline.inventory.hold.HoldHelmets.Work;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;

/** One batch after the other, each a transaction of its own that can be done again. */
@ApplicationScoped
public class HoldBatches {
  private static final Logger LOG = System.getLogger(HoldBatches.class.getName());
  private static final int BATCH = 500;

  private final HoldStore store;
  private final HoldHelmets helmets;
  private final HelmetBatch records;
  private final Plans plans;
  private final Transactions transactions;
  private final Clock clock;

  HoldBatches(
      HoldStore store,
      HoldHelmets helmets,
      HelmetBatch records,
      Plans plans,
      Transactions transactions,
      Clock clock) {
    this.store = store;
    this.helmets = helmets;
    this.records = records;
    this.plans = plans;
    this.transactions = transactions;
    this.clock = clock;
  }

  /** Does the next thing there is; false when there is nothing. */
  public boolean next() {
    return replacements() || batch("due") || batch("freeing");
  }

  /**
   * Before the first player's case opens, so that all cases get what is best for them together. A
   * plan that fails must not hold up the hold: then each case is served by itself.
   */
  private boolean replacements() {
    Optional<Cause> unplanned = store.unplanned();
    unplanned.ifPresent(
        cause -> {
          UUID hold = store.placedBy(cause.id()).orElseThrow();
          try {
            transactions.required(c -> plans.replaceAll(helmets.players(hold), cause));
          } catch (RuntimeException e) {
            LOG.log(Level.WARNING, "No plan of replacements for hold {0}: {1}", hold, e.toString());
          }
          store.planned(hold);
        });
    return unplanned.isPresent();
  }

  private boolean batch(String step) {
    return batch(step, BATCH, 0);
  }

  /**
   * @param most how many helmets it takes at most
   * @param after how many it passes over: those that failed
   */
  public boolean batch(String step, int most, int after) {
    return transactions.required(
        c -> {
          List<Work> found = helmets.next(step, most, after);
          if (found.isEmpty()) {
            return false;
          }
          Work first = found.getFirst();
          List<String> tags =
              found.stream()
                  .filter(w -> w.hold().equals(first.hold()) && w.cause().equals(first.cause()))
                  .map(Work::tag)
                  .toList();
          records.lock(tags);
          Set<String> still = new TreeSet<>(helmets.still(first.hold(), step, tags));
          write(first, List.copyOf(still));
          helmets.done(first.hold(), step, still);
          return true;
        });
  }

  private void write(Work work, List<String> tags) {
    if (work.step().equals("due")) {
      records.hold(tags, new Hold(work.hold(), clock.instant()), work.cause());
    } else {
      records.free(tags, new Free(work.hold(), clock.instant()), work.cause());
    }
  }
}
