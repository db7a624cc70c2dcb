package org.tapeline.inventory.allocation;

import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tapeline.inventory.allocation.Grouping.Shelf;

/**
 * What it costs to take helmets from a shelf: little certification left, and a field's last ones.
 */
final class ShelfSupply {
  private ShelfSupply() {}

  /** The node from which the helmets of the shelf go their ways. */
  static int node(
      FlowNetwork network, int source, Shelf shelf, AllocationPolicy policy, boolean field) {
    int stocked = network.node(0);
    shelf.helmets().stream()
        .collect(
            Collectors.groupingBy(
                h -> policy.ofDaysLeft(h.daysLeft()), TreeMap::new, Collectors.counting()))
        .forEach((cost, pieces) -> network.arc(source, stocked, pieces, cost));
    int spares = field ? Math.min(policy.spares(), shelf.helmets().size()) : 0;
    if (spares == 0) {
      return stocked;
    }
    int node = network.node(0);
    network.arc(stocked, node, shelf.helmets().size() - spares, 0);
    network.arc(stocked, node, spares, policy.minutes().spare());
    return node;
  }
}
