package org.tapeline.fitting.protocol;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
 * @param usual what a helmet of an unknown model is taken to come with; a remedy that only some
 *     helmets allow is proposed there too, for the fitter sees whether it is possible
 * @param models what the known models come with, by code
 */
public record Protocol(
    String id,
    int version,
    String title,
    int hoursAnswersHold,
    List<Check> checks,
    Fittings usual,
    Map<String, Fittings> models) {

  /**
   * @throws IllegalArgumentException for what could let a player through or leave a fitter stuck:
   *     no checks, an id twice, a remedy that voids a check that is not there, a check that cannot
   *     fail, a step for a slot of which nobody knows what sits there
   */
  public Protocol {
    checks = List.copyOf(checks);
    models = Map.copyOf(models);
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
        way.remedies().forEach(r -> stepped(r, usual));
      }
      check.measure().ifPresent(measure -> measured(check.id(), measure, findings));
    }
  }

  private static void stepped(Remedy remedy, Fittings usual) {
    remedy
        .step()
        .ifPresent(
            step ->
                require(
                    remedy.items().contains(usual.fitted().get(step.slot())),
                    remedy.id() + " steps from a part that is not in its row"));
  }

  private static void measured(String check, Measure measure, Set<String> findings) {
    require(
        findings.contains(measure.under()) && measure.over().map(findings::contains).orElse(true),
        check + " measures to a finding that it does not name");
  }

  /** What a helmet of the model comes with; for an unknown one what is usual. */
  public Fittings fittings(String model) {
    return models.getOrDefault(model, usual);
  }

  /** Whether a helmet of the model allows it; one of an unknown model may. */
  public boolean possible(Remedy remedy, String model) {
    Fittings known = models.get(model);
    return known == null || remedy.only().map(known.has()::contains).orElse(true);
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
