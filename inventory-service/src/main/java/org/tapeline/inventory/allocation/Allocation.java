package org.tapeline.inventory.allocation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.tapeline.inventory.allocation.AllocationNetwork.Hand;
import org.tapeline.inventory.allocation.AllocationNetwork.Way;
import org.tapeline.inventory.allocation.Allotment.Given;

/**
 * Hands helmets to players: as many players as possible get one, those of the highest rank first,
 * and of all such plans it is one that costs least.
 */
public final class Allocation {
  private record Door(Kind kind, String field) {}

  private final Situation situation;
  private final AllocationPolicy policy;
  private final AllocationNetwork question;
  private final long[] flow;
  private final List<Iterator<FreeHelmet>> shelves = new ArrayList<>();
  private final List<Iterator<Seeker>> lines = new ArrayList<>();
  private final Map<Door, Deque<Integer>> came = new HashMap<>();

  private Allocation(Situation situation, AllocationPolicy policy, FlowSolver solver) {
    this.situation = situation;
    this.policy = policy;
    this.question = new AllocationNetwork(situation, policy);
    this.flow = solver.leastCost(question.network);
    question.groups.shelves().forEach(shelf -> shelves.add(shelf.helmets().iterator()));
    question.groups.lines().forEach(line -> lines.add(line.seekers().iterator()));
  }

  /**
   * @throws IllegalStateException when the solver's answer is not proved
   */
  public static Allotment of(Situation situation, AllocationPolicy policy, FlowSolver solver) {
    Allocation allocation = new Allocation(situation, policy, solver);
    OptimalityProof proof = OptimalityProof.of(allocation.question.network, allocation.flow);
    if (!proof.proved()) {
      throw new IllegalStateException("The plan is not proved to be the best: " + proof);
    }
    return allocation.handOut(proof);
  }

  private Allotment handOut(OptimalityProof proof) {
    bring();
    List<Given> given = new ArrayList<>();
    for (Hand hand : question.hands) {
      String field = question.groups.lines().get(hand.line()).field();
      Deque<Integer> helmets = came.getOrDefault(new Door(hand.kind(), field), new ArrayDeque<>());
      for (long i = 0; i < flow[hand.arc()]; i++) {
        FreeHelmet helmet = shelves.get(helmets.remove()).next();
        given.add(given(lines.get(hand.line()).next(), helmet, hand));
      }
    }
    List<Seeker> left = new ArrayList<>();
    lines.forEach(line -> line.forEachRemaining(left::add));
    return new Allotment(given, left, proof.cost() - leftOut(left), proof);
  }

  private void bring() {
    Map<Kind, Deque<Integer>> atHub = new HashMap<>();
    for (Way way : question.toHubs) {
      Deque<Integer> hub = atHub.computeIfAbsent(way.kind(), k -> new ArrayDeque<>());
      for (long i = 0; i < flow[way.arc()]; i++) {
        hub.add(way.shelf());
      }
    }
    for (Way way : question.ways) {
      Deque<Integer> door =
          came.computeIfAbsent(new Door(way.kind(), way.field()), d -> new ArrayDeque<>());
      for (long i = 0; i < flow[way.arc()]; i++) {
        door.add(way.shelf() >= 0 ? way.shelf() : atHub.get(way.kind()).remove());
      }
    }
  }

  private Given given(Seeker seeker, FreeHelmet helmet, Hand hand) {
    int minutes =
        policy.ofDaysLeft(helmet.daysLeft())
            + policy.ofWay(situation.ways(), helmet.place(), seeker.field())
            + policy.ofLiking(hand.liking());
    return new Given(seeker, helmet, hand.liking(), minutes);
  }

  private long leftOut(List<Seeker> left) {
    return left.stream()
        .mapToLong(s -> question.leftOut(Grouping.rank(s, situation, policy)))
        .sum();
  }
}
