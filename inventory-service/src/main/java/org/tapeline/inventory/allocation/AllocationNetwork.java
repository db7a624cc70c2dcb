package org.tapeline.inventory.allocation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.tapeline.inventory.allocation.Grouping.Line;
import org.tapeline.inventory.allocation.Grouping.Shelf;

/**
 * The question as a network: from the source to the shelves, over the ways to the doors of the
 * fields (one a kind), to the players. What a helmet costs a player is a sum of what the shelf, the
 * way and the kind cost, so that each stands on an arc of its own and a few thousand arcs say what
 * millions of pairs would. Players who get nothing are served by an arc from the source that costs
 * more than everything that could be saved by it.
 *
 * <p>A player of a higher rank left out costs more than one of a lower rank. Whatever players can
 * be served together, each of the best first, can be served in a plan that serves as many as any
 * (the sets of players that can be served form a matroid), so that the two aims never compete.
 */
final class AllocationNetwork {
  /** So many helmets can go this way: from a shelf, or from a hub where it is -1, to a door. */
  record Way(int arc, Kind kind, int shelf, String field) {}

  /** So many helmets of the kind can go to the players of the line. */
  record Hand(int arc, int line, Kind kind, Seeker.Liking liking) {}

  private static final int SOURCE = 0;
  private static final int SINK = 1;

  final FlowNetwork network = new FlowNetwork();
  final Grouping groups;
  final List<Way> ways = new ArrayList<>();
  final List<Way> toHubs = new ArrayList<>();
  final List<Hand> hands = new ArrayList<>();

  private final AllocationPolicy policy;
  private final Situation situation;
  private final long leftOut;
  private final Map<Kind, SortedMap<String, Integer>> doors = new HashMap<>();
  private final Map<Kind, Integer> hubs = new HashMap<>();

  AllocationNetwork(Situation situation, AllocationPolicy policy) {
    this.situation = situation;
    this.policy = policy;
    this.groups = Grouping.of(situation, policy);
    int players = situation.seekers().size();
    this.leftOut = 1 + (long) players * policy.dearest();
    network.node(players);
    network.node(-players);
    for (int line = 0; line < groups.lines().size(); line++) {
      addLine(line);
    }
    for (int shelf = 0; shelf < groups.shelves().size(); shelf++) {
      addShelf(shelf);
    }
  }

  /** What it costs to leave players of that rank without. */
  long leftOut(int rank) {
    return leftOut * (rank + 1);
  }

  private void addLine(int index) {
    Line line = groups.lines().get(index);
    int players = line.seekers().size();
    int node = network.node(0);
    network.arc(node, SINK, players, 0);
    network.arc(SOURCE, node, players, leftOut(line.rank()));
    for (Seeker.Acceptable a : line.accepts()) {
      int arc =
          network.arc(door(a.kind(), line.field()), node, players, policy.ofLiking(a.liking()));
      hands.add(new Hand(arc, index, a.kind(), a.liking()));
    }
  }

  private int door(Kind kind, String field) {
    return doors
        .computeIfAbsent(kind, k -> new TreeMap<>())
        .computeIfAbsent(field, f -> network.node(0));
  }

  private void addShelf(int index) {
    Shelf shelf = groups.shelves().get(index);
    SortedMap<String, Integer> wanted = doors.get(shelf.kind());
    if (wanted == null) {
      return;
    }
    int pieces = shelf.helmets().size();
    boolean keeps = situation.fields().contains(shelf.place());
    int node = ShelfSupply.node(network, SOURCE, shelf, policy, keeps);
    boolean far = false;
    for (Map.Entry<String, Integer> door : wanted.entrySet()) {
      String field = door.getKey();
      if (isFar(shelf.place(), field)) {
        far = true;
      } else {
        int cost = policy.ofWay(situation.ways(), shelf.place(), field);
        int arc = network.arc(node, door.getValue(), pieces, cost);
        ways.add(new Way(arc, shelf.kind(), index, field));
      }
    }
    if (far) {
      int arc = network.arc(node, hub(shelf.kind()), pieces, 0);
      toHubs.add(new Way(arc, shelf.kind(), index, ""));
    }
  }

  /** All ways that are very long or not known cost the same, and run through one node a kind. */
  private boolean isFar(String from, String field) {
    return !from.equals(field)
        && situation.ways().between(from, field).orElse(Integer.MAX_VALUE)
            >= policy.minutes().farthest();
  }

  private int hub(Kind kind) {
    return hubs.computeIfAbsent(
        kind,
        k -> {
          int node = network.node(0);
          int cost = policy.minutes().handling() + policy.minutes().farthest();
          doors.get(k).forEach((field, door) -> addFar(k, node, field, door, cost));
          return node;
        });
  }

  private void addFar(Kind kind, int hub, String field, int door, int cost) {
    int arc = network.arc(hub, door, situation.seekers().size(), cost);
    ways.add(new Way(arc, kind, -1, field));
  }
}
