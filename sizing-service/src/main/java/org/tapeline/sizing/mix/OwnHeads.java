package org.tapeline.sizing.mix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.sizing.growth.Sex;

/**
 * How an association's own heads lie in the growth reference, in its standard deviations: a
 * hierarchical normal model. Groups of one sex and about one age have means around the
 * association's, which lies around the reference's; few heads pull little.
 *
 * @param level the association's mean
 * @param levelError its standard error
 * @param spread standard deviation of one head around the mean of its group
 * @param groups the groups that have heads
 */
public record OwnHeads(double level, double levelError, double spread, Map<Group, Mean> groups) {
  /** How far associations lie from the reference, and groups from their association: assumed. */
  private static final double BETWEEN_ASSOCIATIONS = 0.5;

  private static final double BETWEEN_GROUPS = 0.25;

  /** The reference's own spread counts like that of so many heads. */
  private static final double PRIOR_HEADS = 20;

  private static final double YEARS_IN_A_GROUP = 3;

  /** Children alike; the band holds three years of age. */
  public record Group(Optional<Sex> sex, int band) {
    public static Group of(Optional<Sex> sex, double ageYears) {
      return new Group(sex, (int) (ageYears / YEARS_IN_A_GROUP));
    }
  }

  /** A head of the association: its group and its place in the reference. */
  public record Head(Group group, double z) {}

  /**
   * The mean of a group.
   *
   * @param error standard error of its own, around what the level says
   * @param byLevel how much of an error of the level it shares, 0 to 1
   */
  public record Mean(double value, double error, double byLevel) {}

  /** From the newest head of each player; from none the reference as it is. */
  public static OwnHeads of(List<Head> heads) {
    Map<Group, List<Double>> byGroup = new HashMap<>();
    heads.forEach(h -> byGroup.computeIfAbsent(h.group(), g -> new ArrayList<>()).add(h.z()));
    double variance = variance(byGroup);
    double weights = 1 / square(BETWEEN_ASSOCIATIONS);
    double sum = 0;
    for (List<Double> zs : byGroup.values()) {
      double weight = 1 / (square(BETWEEN_GROUPS) + variance / zs.size());
      weights += weight;
      sum += weight * mean(zs);
    }
    double level = sum / weights;
    Map<Group, Mean> groups = new HashMap<>();
    byGroup.forEach((group, zs) -> groups.put(group, shrunk(zs, level, variance)));
    return new OwnHeads(level, 1 / Math.sqrt(weights), Math.sqrt(variance), groups);
  }

  /** The mean of a group and how surely it is known beside the level. */
  Mean meanOf(Group group) {
    return groups.getOrDefault(group, new Mean(level, BETWEEN_GROUPS, 1));
  }

  private static Mean shrunk(List<Double> zs, double level, double variance) {
    double own = zs.size() / variance;
    double prior = 1 / square(BETWEEN_GROUPS);
    return new Mean(
        (own * mean(zs) + prior * level) / (own + prior),
        1 / Math.sqrt(own + prior),
        prior / (own + prior));
  }

  /** Around the group means, mixed with the reference's own variance of 1. */
  private static double variance(Map<Group, List<Double>> byGroup) {
    double squares = 0;
    int free = 0;
    for (List<Double> zs : byGroup.values()) {
      double mean = mean(zs);
      squares += zs.stream().mapToDouble(z -> square(z - mean)).sum();
      free += zs.size() - 1;
    }
    return (PRIOR_HEADS + squares) / (PRIOR_HEADS + free);
  }

  private static double mean(List<Double> zs) {
    return zs.stream().mapToDouble(Double::doubleValue).average().orElse(0);
  }

  private static double square(double x) {
    return x * x;
  }
}
