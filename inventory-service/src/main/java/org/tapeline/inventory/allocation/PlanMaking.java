package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.allocation.PlanFacts.Facts;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.store.Sha256;

/** Works plans out and stores them as drafts, which change nothing yet. */
@ApplicationScoped
public class PlanMaking {
  private final PlanFacts facts;
  private final PlanStore store;
  private final AllocationPolicy policy;
  private final FlowSolver solver;

  PlanMaking(PlanFacts facts, PlanStore store, AllocationPolicy policy, FlowSolver solver) {
    this.facts = facts;
    this.store = store;
    this.policy = policy;
    this.solver = solver;
  }

  /**
   * @throws IllegalStateException when what the solver says is not proved to be the best
   */
  Plan make(UUID id, PlanWish wish, String by) {
    Facts known = facts.of(wish);
    Situation s = known.situation();
    Allotment allotment = Allocation.of(s, policy, solver);
    List<PlanLine> lines =
        allotment.given().stream()
            .filter(given -> wish.forPlayers() || given.travels())
            .map(PlanLine::of)
            .toList();
    Plan plan =
        new Plan(
            id,
            Plan.State.DRAFT,
            wish,
            fingerprint(s),
            policy.version(),
            s.seekers().size(),
            s.helmets().size(),
            allotment.given().size(),
            allotment.minutes(),
            allotment.proof().cost(),
            allotment.proof().leastPossible(),
            by,
            s.now(),
            Optional.empty(),
            Optional.empty());
    List<Reason> left = new ArrayList<>(Reasons.of(s, policy, known.notFree(), allotment));
    known.unknown().forEach((field, players) -> left.add(Reason.notMeasured(field, players)));
    store.save(plan, lines, left);
    return plan;
  }

  /** The same when the same players need the same and the same helmets are free. */
  private String fingerprint(Situation s) {
    Sha256 hash = new Sha256();
    hash.add(policy.version());
    for (Seeker seeker : s.seekers()) {
      hash.add(seeker.player());
      add(hash, List.of(seeker.field(), Grouping.rank(seeker, s, policy), seeker.accepts()));
    }
    add(hash, s.helmets());
    add(hash, s.ways());
    return HexFormat.of().formatHex(hash.digest());
  }

  private static void add(Sha256 hash, Object what) {
    hash.add(EventJson.MAPPER.valueToTree(what).toString().getBytes(StandardCharsets.UTF_8));
  }

  /** Of the facts as they are now. */
  String fingerprint(PlanWish wish) {
    return fingerprint(facts.of(wish).situation());
  }
}
