package org.tapeline.inventory.allocation;

import com.google.ortools.Loader;
import com.google.ortools.graph.MinCostFlow;
import com.google.ortools.graph.MinCostFlowBase;

/** The flow solver of OR-Tools, by cost scaling. */
public final class LeastCostFlow implements FlowSolver {

  /** Loads the solver once, when it is needed first: that takes most of a second. */
  private static final class Loaded {
    static {
      Loader.loadNativeLibraries();
    }

    private Loaded() {}

    static MinCostFlow solver(FlowNetwork network) {
      return new MinCostFlow(network.nodes(), network.arcs());
    }
  }

  @Override
  public long[] leastCost(FlowNetwork network) {
    MinCostFlow solver = Loaded.solver(network);
    try {
      for (int arc = 0; arc < network.arcs(); arc++) {
        solver.addArcWithCapacityAndUnitCost(
            network.from(arc), network.to(arc), network.room(arc), network.cost(arc));
      }
      for (int node = 0; node < network.nodes(); node++) {
        solver.setNodeSupply(node, network.supply(node));
      }
      MinCostFlowBase.Status status = solver.solve();
      if (status != MinCostFlowBase.Status.OPTIMAL) {
        throw new IllegalStateException("The flow could not be found: " + status);
      }
      long[] flow = new long[network.arcs()];
      for (int arc = 0; arc < flow.length; arc++) {
        flow[arc] = solver.getFlow(arc);
      }
      return flow;
    } finally {
      solver.delete();
    }
  }
}
