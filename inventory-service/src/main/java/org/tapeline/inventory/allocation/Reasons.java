package org.tapeline.inventory.allocation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.tapeline.inventory.allocation.Allotment.Given;
import org.tapeline.inventory.allocation.Grouping.Line;
import org.tapeline.inventory.allocation.Seeker.Acceptable;
import org.tapeline.inventory.helmet.Words;

/** Says who gets nothing and why, from the plan that was found. */
final class Reasons {
  private final Situation situation;
  private final AllocationPolicy policy;
  private final Map<Kind, Map<String, Integer>> notFree;
  private final Map<Kind, Map<Integer, Integer>> givenByRank = new TreeMap<>();
  private final Map<Kind, Integer> free = new TreeMap<>();

  private Reasons(
      Situation situation,
      AllocationPolicy policy,
      Map<Kind, Map<String, Integer>> notFree,
      Allotment allotment) {
    this.situation = situation;
    this.policy = policy;
    this.notFree = notFree;
    situation.helmets().forEach(h -> free.merge(h.kind(), 1, Integer::sum));
    for (Given given : allotment.given()) {
      givenByRank
          .computeIfAbsent(given.helmet().kind(), k -> new TreeMap<>())
          .merge(Grouping.rank(given.seeker(), situation, policy), 1, Integer::sum);
    }
  }

  /** One for players of one field who come in the same order and accept the same. */
  static List<Reason> of(
      Situation situation,
      AllocationPolicy policy,
      Map<Kind, Map<String, Integer>> notFree,
      Allotment allotment) {
    Reasons reasons = new Reasons(situation, policy, notFree, allotment);
    Situation left =
        new Situation(allotment.left(), List.of(), situation.ways(), Set.of(), situation.now());
    return Grouping.of(left, policy).lines().stream().map(reasons::reason).toList();
  }

  private Reason reason(Line line) {
    List<Kind> kinds = line.accepts().stream().map(Acceptable::kind).toList();
    int there = kinds.stream().mapToInt(k -> free.getOrDefault(k, 0)).sum();
    String taken =
        there == 0
            ? "There is no free helmet of " + names(kinds) + "."
            : taken(there, line.rank(), kinds);
    int players = line.seekers().size();
    String helps = players + " more of " + name(kinds.getFirst()) + " at " + line.field();
    return new Reason(line.field(), players, taken + elsewhere(kinds), helps);
  }

  /** All that there are go to others: else the plan would serve one more. */
  private String taken(int there, int rank, List<Kind> kinds) {
    int before = 0;
    for (Kind kind : kinds) {
      for (Map.Entry<Integer, Integer> e : givenByRank.getOrDefault(kind, Map.of()).entrySet()) {
        before += e.getKey() > rank ? e.getValue() : 0;
      }
    }
    String all =
        there == 1
            ? "The one free helmet of " + names(kinds) + " goes to another player"
            : "All " + there + " free helmets of " + names(kinds) + " go to other players";
    int alike = there - before;
    return all + ": " + before + " of higher urgency or waiting longer, " + alike + " alike.";
  }

  private String elsewhere(List<Kind> kinds) {
    Map<String, Integer> counts = new TreeMap<>();
    for (Kind kind : kinds) {
      notFree.getOrDefault(kind, Map.of()).forEach((why, n) -> counts.merge(why, n, Integer::sum));
    }
    String list =
        counts.entrySet().stream()
            .map(e -> e.getValue() + " " + said(e.getKey()))
            .collect(Collectors.joining(", "));
    return list.isEmpty() ? "" : " Not to be had: " + list + ".";
  }

  private static String said(String why) {
    return switch (why) {
      case "planned" -> "planned for others";
      case "reserved" -> "kept for re-fits";
      case "quarantined" -> "waiting for inspection";
      case "held" -> "on hold";
      case "at-reconditioner" -> "at the reconditioner";
      case "too-old" -> "past the last age";
      case "left-where-it-is" -> "at places that are left out";
      default -> Words.code(why).toLowerCase(Locale.ROOT);
    };
  }

  /** Youth large in Model A or Model B, Youth medium in Model A. */
  private static String names(List<Kind> kinds) {
    Map<String, List<String>> models = new LinkedHashMap<>();
    for (Kind kind : kinds) {
      models.computeIfAbsent(kind.size(), s -> new ArrayList<>()).add(Words.model(kind.model()));
    }
    return models.entrySet().stream()
        .map(e -> Words.code(e.getKey()) + " in " + String.join(" or ", e.getValue()))
        .collect(Collectors.joining(", "));
  }

  static String name(Kind kind) {
    return names(List.of(kind));
  }
}
