package org.tapeline.inventory.allocation;

import java.util.Arrays;

/**
 * Whether a flow is possible and none is cheaper, worked out from the network and the flow alone,
 * whoever found it.
 *
 * <p>Prices at the nodes, whatever they are, give a sum below which no flow of this network can
 * cost (weak duality of linear programs). Here they are the least costs of moving one more piece
 * through what the flow leaves open; when no round trip there saves anything, the sum under them is
 * the flow's own cost (complementary slackness), and that proves it.
 *
 * @param possible no arc is overfull and no piece appears or vanishes at a node
 * @param cost of the flow
 * @param leastPossible no flow costs less than that
 */
public record OptimalityProof(boolean possible, long cost, long leastPossible) {

  public boolean proved() {
    return possible && gap() == 0;
  }

  /** By how much another flow could be cheaper at most. */
  public long gap() {
    return cost - leastPossible;
  }

  public static OptimalityProof of(FlowNetwork network, long[] flow) {
    boolean possible = possible(network, flow);
    long[] price = possible ? prices(network, flow) : new long[network.nodes()];
    long cost = 0;
    long least = 0;
    for (int arc = 0; arc < network.arcs(); arc++) {
      cost += flow[arc] * network.cost(arc);
      long left = network.cost(arc) + price[network.from(arc)] - price[network.to(arc)];
      least += network.room(arc) * Math.min(0, left);
    }
    for (int node = 0; node < network.nodes(); node++) {
      least -= price[node] * network.supply(node);
    }
    return new OptimalityProof(possible, cost, least);
  }

  private static boolean possible(FlowNetwork network, long[] flow) {
    if (flow.length != network.arcs()) {
      throw new IllegalArgumentException("A flow has one number for each arc");
    }
    long[] over = new long[network.nodes()];
    for (int node = 0; node < over.length; node++) {
      over[node] = network.supply(node);
    }
    for (int arc = 0; arc < flow.length; arc++) {
      if (flow[arc] < 0 || flow[arc] > network.room(arc)) {
        return false;
      }
      over[network.from(arc)] -= flow[arc];
      over[network.to(arc)] += flow[arc];
    }
    return Arrays.stream(over).allMatch(pieces -> pieces == 0);
  }

  /** Bellman and Ford's least costs; of a flow that is not the cheapest they are cut short. */
  private static long[] prices(FlowNetwork network, long[] flow) {
    long[] price = new long[network.nodes()];
    boolean changed = true;
    for (int round = 0; changed && round < network.nodes(); round++) {
      changed = false;
      for (int arc = 0; arc < flow.length; arc++) {
        int from = network.from(arc);
        int to = network.to(arc);
        long cost = network.cost(arc);
        if (flow[arc] < network.room(arc) && price[from] + cost < price[to]) {
          price[to] = price[from] + cost;
          changed = true;
        }
        if (flow[arc] > 0 && price[to] - cost < price[from]) {
          price[from] = price[to] - cost;
          changed = true;
        }
      }
    }
    return price;
  }
}
