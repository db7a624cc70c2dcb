package org.tapeline.inventory.allocation;

import java.util.Arrays;

/**
 * A network through which pieces flow: from its supply along arcs, each with room for so many and a
 * cost for each, to where they are taken.
 */
public final class FlowNetwork {
  private int[] from = new int[1024];
  private int[] to = new int[1024];
  private long[] room = new long[1024];
  private long[] cost = new long[1024];
  private long[] supply = new long[256];
  private int arcs;
  private int nodes;

  /**
   * @param supply pieces that enter here, or are taken out here when it is below 0
   */
  public int node(long supply) {
    if (nodes == this.supply.length) {
      this.supply = Arrays.copyOf(this.supply, 2 * nodes);
    }
    this.supply[nodes] = supply;
    return nodes++;
  }

  /**
   * @param room pieces at most, 0 or more
   * @param cost for each piece, 0 or more
   */
  public int arc(int from, int to, long room, long cost) {
    if (from < 0 || from >= nodes || to < 0 || to >= nodes || room < 0 || cost < 0) {
      throw new IllegalArgumentException("No such arc: " + from + " " + to + " " + room);
    }
    if (arcs == this.from.length) {
      grow();
    }
    this.from[arcs] = from;
    this.to[arcs] = to;
    this.room[arcs] = room;
    this.cost[arcs] = cost;
    return arcs++;
  }

  private void grow() {
    int more = 2 * arcs;
    from = Arrays.copyOf(from, more);
    to = Arrays.copyOf(to, more);
    room = Arrays.copyOf(room, more);
    cost = Arrays.copyOf(cost, more);
  }

  public int nodes() {
    return nodes;
  }

  public int arcs() {
    return arcs;
  }

  public int from(int arc) {
    return from[arc];
  }

  public int to(int arc) {
    return to[arc];
  }

  public long room(int arc) {
    return room[arc];
  }

  public long cost(int arc) {
    return cost[arc];
  }

  public long supply(int node) {
    return supply[node];
  }
}
