package org.tapeline.inventory.allocation;

import org.tapeline.inventory.allocation.Seeker.Acceptable;

/** The same question with an arc for every player and helmet that go together; without spares. */
final class OneByOne {
  private OneByOne() {}

  static long leastCost(Situation s, AllocationPolicy policy, FlowSolver solver) {
    FlowNetwork network = network(s, policy);
    return OptimalityProof.of(network, solver.leastCost(network)).cost();
  }

  static FlowNetwork network(Situation s, AllocationPolicy policy) {
    AllocationNetwork grouped = new AllocationNetwork(s, policy);
    FlowNetwork network = new FlowNetwork();
    int source = network.node(s.seekers().size());
    int sink = network.node(-s.seekers().size());
    int first = network.nodes();
    for (int i = 0; i < s.helmets().size(); i++) {
      network.arc(source, network.node(0), 1, 0);
    }
    for (Seeker seeker : s.seekers()) {
      int node = network.node(0);
      network.arc(node, sink, 1, 0);
      network.arc(source, node, 1, grouped.leftOut(Grouping.rank(seeker, s, policy)));
      for (int i = 0; i < s.helmets().size(); i++) {
        FreeHelmet helmet = s.helmets().get(i);
        for (Acceptable a : seeker.accepts()) {
          if (a.kind().equals(helmet.kind())) {
            network.arc(first + i, node, 1, cost(s, policy, seeker, helmet, a));
          }
        }
      }
    }
    return network;
  }

  static long cost(
      Situation s, AllocationPolicy policy, Seeker seeker, FreeHelmet helmet, Acceptable accepts) {
    return policy.ofDaysLeft(helmet.daysLeft())
        + policy.ofWay(s.ways(), helmet.place(), seeker.field())
        + policy.ofLiking(accepts.liking());
  }
}
