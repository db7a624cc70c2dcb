package org.tapeline.inventory.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How long a helmet may be worn: data, validated when it is read. What the helmet's maker or its
 * reconditioner dated on the label counts before any interval; the last age counts before
 * everything, and so does not wait for a label. A helmet without a date gets the cautious one,
 * never none.
 *
 * @param version rises with each change
 * @param source where the rules come from
 * @param otherwise for models that are not named
 */
public record HelmetPolicy(int version, String source, Rule otherwise, List<OfModel> models) {

  /** Whose rule it is, the ones that come first first. */
  public enum Whose {
    MAKER,
    RECONDITIONER,
    ASSOCIATION,
    CAUTIOUS
  }

  /**
   * How long.
   *
   * @param certifiedMonths how long a certification holds when no label says so, 1 to 60
   * @param lastAgeYears full years from the day of manufacture after which it is not worn, 1 to 20
   */
  public record Rule(int certifiedMonths, int lastAgeYears, Whose whose) {
    public Rule {
      if (certifiedMonths < 1 || certifiedMonths > 60 || lastAgeYears < 1 || lastAgeYears > 20) {
        throw new IllegalArgumentException(
            "A certification holds 1 to 60 months, and a helmet 1 to 20 years");
      }
      if (whose == null) {
        throw new IllegalArgumentException("Say whose rule it is");
      }
    }
  }

  /** The rule of a model. */
  public record OfModel(String model, int certifiedMonths, int lastAgeYears, Whose whose) {
    Rule rule() {
      return new Rule(certifiedMonths, lastAgeYears, whose);
    }
  }

  /**
   * @throws IllegalArgumentException for rules without a source, or two for one model
   */
  public HelmetPolicy {
    if (source == null || source.isBlank() || otherwise == null) {
      throw new IllegalArgumentException("The policy has a source and a rule for other models");
    }
    models = List.copyOf(models);
    models.forEach(OfModel::rule);
    Map<String, Long> times =
        models.stream().collect(Collectors.groupingBy(OfModel::model, Collectors.counting()));
    times.forEach(
        (model, n) -> {
          if (n > 1) {
            throw new IllegalArgumentException("Two rules for " + model);
          }
        });
  }

  public Rule of(String model) {
    return models.stream()
        .filter(m -> m.model().equals(model))
        .findFirst()
        .map(OfModel::rule)
        .orElse(otherwise);
  }

  /** The last day of its last age. */
  public LocalDate lastDay(String model, LocalDate manufacturedOn) {
    return manufacturedOn.plusYears(of(model).lastAgeYears()).minusDays(1);
  }

  /**
   * The last day on which it may be worn, if nothing else is against it.
   *
   * @param label what its certification label says; empty when it says no date
   * @param since from when an interval counts: its manufacture, or its last reconditioning
   */
  public LocalDate usableUntil(
      String model, LocalDate manufacturedOn, Optional<LocalDate> label, LocalDate since) {
    LocalDate certified =
        label.orElseGet(() -> since.plusMonths(of(model).certifiedMonths()).minusDays(1));
    LocalDate last = lastDay(model, manufacturedOn);
    return certified.isBefore(last) ? certified : last;
  }

  /** In words, for the helmet's page. */
  public String says(String model) {
    Rule rule = of(model);
    String whose =
        switch (rule.whose()) {
          case MAKER -> "the helmet maker's rule";
          case RECONDITIONER -> "the reconditioner's rule";
          case ASSOCIATION -> "the association's rule";
          case CAUTIOUS -> "the cautious rule for models that are not listed";
        };
    return ("Certified for %d months when the label gives no date, and not worn from %d years after"
            + " manufacture: %s.")
        .formatted(rule.certifiedMonths(), rule.lastAgeYears(), whose);
  }
}
