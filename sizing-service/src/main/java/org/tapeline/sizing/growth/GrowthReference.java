package org.tapeline.sizing.growth;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.tapeline.sizing.units.Millimetres;

/**
 * How large heads are by age and sex. Before its first and after its last age the reference stands
 * still: heads of adults hardly grow, and children under five seldom play.
 *
 * @param name what it is called, for people
 */
public record GrowthReference(String name, Map<Sex, NavigableMap<Double, Lms>> ages) {
  private static final int HALVINGS = 60;

  public GrowthReference {
    Map<Sex, NavigableMap<Double, Lms>> copy = new EnumMap<>(Sex.class);
    ages.forEach((sex, table) -> copy.put(sex, new TreeMap<>(table)));
    ages = copy;
  }

  /**
   * The share of children of that age with a smaller head, 0 to 1. Where the sex is not known,
   * girls and boys count half each.
   */
  public double below(Optional<Sex> sex, double ageYears, Millimetres head) {
    return mean(sex, ageYears, head.value());
  }

  /** The head that this share of children of that age lies below. */
  public Millimetres headAt(Optional<Sex> sex, double ageYears, double share) {
    double low = 1;
    double high = 1_500;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (mean(sex, ageYears, middle) < share) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new Millimetres((low + high) / 2);
  }

  /** How many standard deviations from the median of that age and sex. */
  public double z(Sex sex, double ageYears, Millimetres head) {
    return at(sex, ageYears).z(head.value());
  }

  /** The head at so many standard deviations from the median of that age and sex. */
  public Millimetres headAtZ(Sex sex, double ageYears, double z) {
    return new Millimetres(at(sex, ageYears).atZ(z));
  }

  private double mean(Optional<Sex> sex, double ageYears, double mm) {
    List<Sex> counted = sex.map(List::of).orElse(List.of(Sex.values()));
    return counted.stream().mapToDouble(s -> at(s, ageYears).below(mm)).average().orElseThrow();
  }

  private Lms at(Sex sex, double ageYears) {
    NavigableMap<Double, Lms> table = ages.get(sex);
    Map.Entry<Double, Lms> before = table.floorEntry(ageYears);
    Map.Entry<Double, Lms> after = table.ceilingEntry(ageYears);
    if (before == null) {
      return table.firstEntry().getValue();
    }
    if (after == null || after.getKey().equals(before.getKey())) {
      return before.getValue();
    }
    double share = (ageYears - before.getKey()) / (after.getKey() - before.getKey());
    return before.getValue().towards(after.getValue(), share);
  }

  public HeadForAge place(Optional<Sex> sex, double ageYears, Millimetres head) {
    return new HeadForAge(below(sex, ageYears, head), ageYears, head, name);
  }
}
