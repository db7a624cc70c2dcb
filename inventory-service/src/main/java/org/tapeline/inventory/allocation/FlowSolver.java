package org.tapeline.inventory.allocation;

/**
 * Finds how pieces flow at least total cost. What it says is checked by {@link OptimalityProof}.
 */
@FunctionalInterface
public interface FlowSolver {

  /**
   * @return how many pieces flow along each arc, in the order of the arcs
   */
  long[] leastCost(FlowNetwork network);
}
