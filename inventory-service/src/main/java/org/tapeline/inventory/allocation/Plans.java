package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.allocation.PlanCommit.Outcome;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * Replaces helmets for many players at once: makes plans, and keeps what a plan gives out.
 *
 * <p>A plan is a draft first and changes nothing. Once it is committed, nobody else is given its
 * helmets until it expires, and each player's re-fit case is served with the planned one.
 */
@ApplicationScoped
public class Plans {
  private static final String BY_ITSELF = "tapeline";

  private final PlanMaking making;
  private final PlanCommit commit;
  private final PlanRelease release;
  private final PlanStore store;
  private final CommandLog commands;
  private final Transactions transactions;

  Plans(
      PlanMaking making,
      PlanCommit commit,
      PlanRelease release,
      PlanStore store,
      CommandLog commands,
      Transactions transactions) {
    this.making = making;
    this.commit = commit;
    this.release = release;
    this.store = store;
    this.commands = commands;
    this.transactions = transactions;
  }

  /**
   * Plans replacements for all these players together and keeps them, in the caller's transaction
   * or one of its own. Players who have no helmet planned or reserved yet are served, whether they
   * still have their old one or not; the best comes first and the least travelling (see {@link
   * Allocation}). Called before the first case of these players opens, all their cases get what is
   * best for them together; a case that was served before keeps what it has.
   *
   * <p>Facts are read and lines are written in bulk: 20,000 players with as many free helmets take
   * some seconds. Call it from a background job. With the same cause again it does nothing.
   *
   * @return the plan, which the page {@code /inventory/plans/<plan>} shows
   */
  public UUID replaceAll(Set<UUID> players, Cause cause) {
    UUID id = DerivedId.from(cause.id(), "replace-all");
    List<UUID> inOrder = List.copyOf(new TreeSet<>(players));
    PlanWish wish = new PlanWish(PlanWish.Sort.HOLD, "", inOrder, List.of(), List.of(), true);
    return transactions.required(
        connection -> {
          if (!inOrder.isEmpty() && store.find(id).isEmpty()) {
            commit.commit(making.make(id, wish, BY_ITSELF), BY_ITSELF, cause);
          }
          return id;
        });
  }

  /** Makes a draft. */
  Answer draft(PlanWish wish, String by, UUID id) {
    return commands.once(
        id,
        "plan",
        wish,
        () -> Answer.of(201, new Made(making.make(DerivedId.from(id, "plan"), wish, by).plan())));
  }

  /** The plan that was made. */
  record Made(UUID plan) {}

  /**
   * Keeps what still holds of a draft.
   *
   * @throws Problem when it was committed before
   */
  Answer commit(UUID id, String by, UUID command) {
    return commands.once(
        command,
        "commit-plan/" + id,
        "",
        () -> {
          Plan plan = known(id);
          if (!plan.isDraft()) {
            throw Problem.conflict("plan-committed", "This plan was committed before.");
          }
          Outcome outcome = commit.commit(plan, by, Cause.command(command));
          return Answer.of(200, outcome);
        });
  }

  /** Gives back what is kept still. */
  Answer release(UUID id, UUID command) {
    return commands.once(
        command,
        "release-plan/" + id,
        "",
        () -> {
          known(id);
          int helmets = release.all(id, "cancelled", Cause.command(command));
          return Answer.of(200, new Released(id, helmets));
        });
  }

  /** How many helmets are free again. */
  record Released(UUID plan, int helmets) {}

  private Plan known(UUID id) {
    return store.locked(id).orElseThrow(() -> Problem.notFound("There is no plan " + id + "."));
  }
}
