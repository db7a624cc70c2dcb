package org.tapeline.sizing.mix;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.units.Millimetres;

/** How many of each size of a model a roster needs. */
public final class SizeMix {
  /**
   * Standard normal points of equal weight, the middles of so many equal shares: at them what is
   * not known of the association's level, and of each group's mean, is taken into account.
   */
  private static final int POINTS = 9;

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private final SizeChart chart;
  private final GrowthReference reference;
  private final OwnHeads own;

  public SizeMix(SizeChart chart, GrowthReference reference, OwnHeads own) {
    this.chart = chart;
    this.reference = reference;
    this.own = own;
  }

  /** A player whose head is known, on the day that counts. */
  public record Known(double mm, double spreadMm) {}

  /** A player whose head is not known; players of the same half year count alike. */
  public record Unknown(Optional<Sex> sex, double ageYears) {
    Unknown rounded() {
      return new Unknown(sex, Math.round(ageYears * 2) / 2.0);
    }
  }

  /**
   * The count of each size, small to large. What one player of unknown head says of the level of
   * the association concerns all others too, so their counts go up and down together.
   */
  public List<CountDistribution> counts(List<Known> known, List<Unknown> unknown) {
    Map<OwnHeads.Group, Map<Unknown, Integer>> groups = new HashMap<>();
    for (Unknown player : unknown) {
      groups
          .computeIfAbsent(OwnHeads.Group.of(player.sex(), player.ageYears()), g -> new HashMap<>())
          .merge(player.rounded(), 1, Integer::sum);
    }
    List<CountDistribution> counts = new ArrayList<>();
    for (int size = 0; size < chart.sizes().size(); size++) {
      int index = size;
      CountDistribution ofKnown =
          PoissonBinomial.of(known.stream().mapToDouble(k -> chance(k, index)).toArray());
      counts.add(ofKnown.plus(ofUnknown(groups, index)));
    }
    return counts;
  }

  private double chance(Known player, int size) {
    double spread = Math.max(player.spreadMm(), 1e-6);
    return NormalDistribution.of(player.mm(), spread).probability(from(size), to(size));
  }

  /** What is not known of the level concerns all groups alike. */
  private CountDistribution ofUnknown(Map<OwnHeads.Group, Map<Unknown, Integer>> groups, int size) {
    if (groups.isEmpty()) {
      return CountDistribution.NONE;
    }
    List<CountDistribution> atPoints = new ArrayList<>();
    for (int point = 0; point < POINTS; point++) {
      double level = own.levelError() * normalPoint(point);
      CountDistribution counts = CountDistribution.NONE;
      for (Map.Entry<OwnHeads.Group, Map<Unknown, Integer>> group : groups.entrySet()) {
        counts = counts.plus(ofGroup(group.getKey(), group.getValue(), level, size));
      }
      atPoints.add(counts);
    }
    return CountDistribution.mixed(atPoints);
  }

  /** What is not known of a group's own mean concerns its players alike. */
  private CountDistribution ofGroup(
      OwnHeads.Group group, Map<Unknown, Integer> alike, double level, int size) {
    OwnHeads.Mean mean = own.meanOf(group);
    List<CountDistribution> atPoints = new ArrayList<>();
    for (int point = 0; point < POINTS; point++) {
      double z = mean.value() + mean.byLevel() * level + mean.error() * normalPoint(point);
      CountDistribution counts = CountDistribution.NONE;
      for (Map.Entry<Unknown, Integer> players : alike.entrySet()) {
        double chance = chance(players.getKey(), size, z);
        counts = counts.plus(PoissonBinomial.ofAlike(players.getValue(), chance));
      }
      atPoints.add(counts);
    }
    return CountDistribution.mixed(atPoints);
  }

  private static double normalPoint(int point) {
    return NORMAL.inverseCumulativeProbability((point + 0.5) / POINTS);
  }

  /**
   * @param mean of the player's group, in standard deviations of the reference
   */
  private double chance(Unknown player, int size, double mean) {
    List<Sex> sexes = player.sex().map(List::of).orElse(List.of(Sex.values()));
    NormalDistribution z = NormalDistribution.of(mean, own.spread());
    double chance = 0;
    for (Sex sex : sexes) {
      double from = z(sex, player.ageYears(), from(size));
      double to = z(sex, player.ageYears(), to(size));
      chance += z.probability(from, to) / sexes.size();
    }
    return chance;
  }

  private double z(Sex sex, double age, double mm) {
    return reference.z(sex, age, new Millimetres(mm));
  }

  private double from(int size) {
    return chart.sizes().get(size).from().value();
  }

  private double to(int size) {
    return chart.endOf(size).value();
  }
}
