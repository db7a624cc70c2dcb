package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.allocation.PlanEvent.PlanCommitted;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reservation.Reservations;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Keeps the helmets of a plan for its players, as far as it still holds. */
@ApplicationScoped
public class PlanCommit {
  private static final String LOCK =
      """
      select h.tag from helmet h join plan_line l on l.tag = h.tag
       where l.plan = ? and h.state = 'available' and h.reserved_for is null
         and h.planned_for is null
       order by h.tag for update of h
      """;
  private static final String KEEP =
      """
      insert into planned_helmet (tag, player, plan, field, kept_until)
      select l.tag, l.player, l.plan, l.field, ? from plan_line l
       where l.plan = ? and l.tag = any (string_to_array(?, ','))
         and l.player = any (string_to_array(?, ',')::uuid[])
      on conflict do nothing
      """;
  private static final String MARK =
      """
      update helmet h set planned_for = p.player
        from planned_helmet p where p.plan = ? and p.tag = h.tag
      """;
  private static final String OUTCOME =
      """
      update plan_line l set outcome =
        case when exists (select 1 from planned_helmet p where p.plan = l.plan and p.tag = l.tag)
             then 'kept'
             when l.tag like 'to-buy-%' then 'to-buy'
             when l.tag = any (string_to_array(?, ',')) then 'not-needed'
             else 'helmet-gone' end
       where l.plan = ?
      """;
  private static final String WAITING_CASES =
      """
      select distinct c.refit_case from planned_helmet p
        join refit_case c on c.player = p.player and c.open
        join case_need n on n.refit_case = c.refit_case
       where p.plan = ? and n.kind = 'helmet' and n.status = 'waiting' order by 1
      """;

  private final PlanSeekers seekers;
  private final PlanTransfers transfers;
  private final Reservations reservations;
  private final AllocationPolicy policy;
  private final Database database;
  private final Journal journal;
  private final Clock clock;

  PlanCommit(
      PlanSeekers seekers,
      PlanTransfers transfers,
      Reservations reservations,
      AllocationPolicy policy,
      Database database,
      Journal journal,
      Clock clock) {
    this.seekers = seekers;
    this.transfers = transfers;
    this.reservations = reservations;
    this.policy = policy;
    this.database = database;
    this.journal = journal;
    this.clock = clock;
  }

  /** What came of it: helmets that are kept, and that were free when it was made and are gone. */
  record Outcome(UUID plan, int kept, int gone) {}

  Outcome commit(Plan plan, String by, Cause cause) {
    Instant now = clock.instant();
    Instant until = now.plus(Duration.ofDays(policy.keptDays()));
    List<String> free = database.list(LOCK, row -> row.getString(1), plan.plan());
    String tags = String.join(",", free);
    String needing =
        PlanSeekers.join(
            seekers.of(plan.wish(), now).known().stream().map(Seeker::player).toList());
    int kept = database.change(KEEP, until, plan.plan(), tags, needing);
    database.change(MARK, plan.plan());
    database.change(OUTCOME, tags, plan.plan());
    database.change(
        "update plan set state = 'committed', committed_at = ?, kept_until = ? where plan = ?",
        now,
        until,
        plan.plan());
    Outcome outcome = new Outcome(plan.plan(), kept, gone(plan.plan()));
    say(plan, outcome, until, by, now, cause);
    serveWaiting(plan.plan(), cause);
    transfers.ask(plan, cause);
    return outcome;
  }

  private int gone(UUID plan) {
    return database
        .first(
            "select count(*) from plan_line where plan = ? and outcome = 'helmet-gone'",
            row -> row.getInt(1),
            plan)
        .orElse(0);
  }

  /** Who has a case gets what is planned at once, with its date. */
  private void serveWaiting(UUID plan, Cause cause) {
    database
        .list(WAITING_CASES, row -> row.getObject(1, UUID.class), plan)
        .forEach(refitCase -> reservations.serveHelmets(refitCase, cause));
  }

  private void say(Plan plan, Outcome outcome, Instant until, String by, Instant now, Cause cause) {
    PlanCommitted committed =
        new PlanCommitted(
            plan.plan(),
            plan.wish().sort().code(),
            plan.seekers(),
            outcome.kept(),
            plan.seekers() - outcome.kept(),
            outcome.gone(),
            until,
            by,
            now);
    journal.append(
        StreamName.of("plan", plan.plan(), plan.plan()),
        0,
        List.of(committed),
        cause.step("commit-plan"));
  }
}
