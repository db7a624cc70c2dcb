package org.tapeline.fitting.protocol;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A fit protocol: the checks in the order in which they are worked through. Every one of them is
 * required. Data, so that an association can have its own.
 *
 * @param id such as {@code youth-football}
 * @param version rises with each change
 * @param hoursAnswersHold an answer older than this no longer counts: a fit check is one sitting
 */
public record Protocol(
    String id, int version, String title, int hoursAnswersHold, List<Check> checks) {

  /**
   * @throws IllegalArgumentException for what could let a player through or leave a fitter stuck:
   *     no checks, an id twice, a remedy that voids a check that is not there, a check that cannot
   *     fail
   */
  public Protocol {
    checks = List.copyOf(checks);
    require(!checks.isEmpty() && version >= 1, "A protocol has a version and checks");
    require(hoursAnswersHold >= 1 && hoursAnswersHold <= 24, "Answers hold 1 to 24 hours");
    Set<String> ids = checks.stream().map(Check::id).collect(Collectors.toSet());
    require(ids.size() == checks.size(), "Two checks have the same id");
    for (Check check : checks) {
      require(!check.ways().isEmpty(), check.id() + " names no way in which it fails");
      Set<String> findings = new HashSet<>();
      for (Check.Way way : check.ways()) {
        require(findings.add(way.finding()), check.id() + " names a finding twice");
        way.remedies()
            .forEach(r -> require(ids.containsAll(r.voids()), r.id() + " voids an unknown check"));
      }
    }
  }

  public Optional<Check> check(String checkId) {
    return checks.stream().filter(c -> c.id().equals(checkId)).findFirst();
  }

  /** All remedies, each once, in the order in which they first stand. */
  public List<Remedy> remedies() {
    return checks.stream()
        .flatMap(c -> c.ways().stream())
        .flatMap(w -> w.remedies().stream())
        .distinct()
        .toList();
  }

  /** A check's question; the id itself for one that is not there. */
  public String question(String checkId) {
    return check(checkId).map(Check::question).orElse(checkId);
  }

  private static void require(boolean met, String otherwise) {
    if (!met) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
