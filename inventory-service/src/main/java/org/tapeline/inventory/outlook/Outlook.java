package org.tapeline.inventory.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.random.RandomGenerator;

/**
 * Plays the coming seasons through many times. In each run the share that reconditioners reject and
 * the roster's growth are drawn once, and hold for all sizes and years: nobody knows them, but they
 * are the same for all. Each year helmets reach their last age, some of those that went are
 * rejected, the need is drawn, and what is missing is bought and ages with the rest. What is bought
 * stays, so that one large year makes the next ones smaller.
 */
public final class Outlook {
  private Outlook() {}

  /**
   * What is asked.
   *
   * @param firstSeason the year of the first season that is looked at
   * @param rejectsFirst whether helmets go to the reconditioner before the first season
   * @param rejectionShares equally likely shares, one a run
   * @param seasonsOfNew how many seasons a new helmet lasts, 1 or more
   * @param goesOfNew which part of new ones goes in a year
   */
  public record Question(
      int firstSeason,
      int years,
      boolean rejectsFirst,
      List<Cohort> fleet,
      List<SizeNeed> needs,
      double[] rejectionShares,
      double growthMean,
      double growthSd,
      int seasonsOfNew,
      double goesOfNew,
      long seed) {
    public Question {
      fleet = List.copyOf(fleet);
      needs = List.copyOf(needs);
      rejectionShares = rejectionShares.clone();
    }
  }

  /**
   * A year of a size, or of all sizes together.
   *
   * @param tooOld how many reach their last age before that season
   */
  public record Year(String size, int season, Band tooOld, Band rejected, Band buy) {}

  /**
   * @param bySize in the order of the needs, each with its years
   * @param inAll all sizes together; its bands are not the sums of the sizes' bands
   */
  public record Answer(List<Year> bySize, List<Year> inAll) {}

  /** The same question has the same answer. */
  public static Answer of(Question q) {
    int runs = q.rejectionShares().length;
    int sizes = q.needs().size();
    Tally[] tallies = new Tally[sizes + 1];
    for (int s = 0; s <= sizes; s++) {
      tallies[s] = new Tally(q.years(), runs);
    }
    RandomGenerator random = new SplittableRandom(q.seed());
    for (int run = 0; run < runs; run++) {
      double growth = q.growthMean() + q.growthSd() * random.nextGaussian();
      for (int s = 0; s < sizes; s++) {
        play(q, q.needs().get(s), run, growth, random, tallies[s], tallies[sizes]);
      }
    }
    List<Year> bySize = new ArrayList<>();
    for (int s = 0; s < sizes; s++) {
      bySize.addAll(tallies[s].years(q.needs().get(s).size(), q.firstSeason()));
    }
    return new Answer(List.copyOf(bySize), tallies[sizes].years("", q.firstSeason()));
  }

  /** Helmets that leave in one year and go as often as each other. */
  private record Leaving(int lastSeason, double goes) implements Comparable<Leaving> {
    @Override
    public int compareTo(Leaving other) {
      int first = Integer.compare(lastSeason, other.lastSeason);
      return first != 0 ? first : Double.compare(goes, other.goes);
    }
  }

  private static void play(
      Question q,
      SizeNeed need,
      int run,
      double growth,
      RandomGenerator random,
      Tally size,
      Tally all) {
    TreeMap<Leaving, Integer> stock = new TreeMap<>();
    q.fleet().stream()
        .filter(c -> c.size().equals(need.size()))
        .forEach(
            c -> stock.merge(new Leaving(c.lastSeason(), c.goes()), c.helmets(), Integer::sum));
    for (int year = 0; year < q.years(); year++) {
      int season = q.firstSeason() + year;
      int old = takeOut(stock, season);
      boolean goes = year > 0 || q.rejectsFirst();
      int rejected = goes ? reject(stock, q.rejectionShares()[run], random) : 0;
      double mean = need.expected() * Math.pow(1 + growth, year);
      int wanted = Draws.need(mean, need.sd(), random);
      int buy = Math.max(0, wanted - stock.values().stream().mapToInt(n -> n).sum());
      stock.merge(new Leaving(season + q.seasonsOfNew() - 1, q.goesOfNew()), buy, Integer::sum);
      size.add(year, run, old, rejected, buy);
      all.add(year, run, old, rejected, buy);
    }
  }

  private static int takeOut(TreeMap<Leaving, Integer> stock, int season) {
    int old = 0;
    while (!stock.isEmpty() && stock.firstKey().lastSeason() < season) {
      old += stock.pollFirstEntry().getValue();
    }
    return old;
  }

  private static int reject(TreeMap<Leaving, Integer> stock, double share, RandomGenerator random) {
    int rejected = 0;
    for (var entry : stock.entrySet()) {
      int gone = Draws.binomial(entry.getValue(), share * entry.getKey().goes(), random);
      entry.setValue(entry.getValue() - gone);
      rejected += gone;
    }
    return rejected;
  }

  /** What each run gave, by year. */
  private static final class Tally {
    private final int[][] old;
    private final int[][] rejected;
    private final int[][] buy;

    Tally(int years, int runs) {
      old = new int[years][runs];
      rejected = new int[years][runs];
      buy = new int[years][runs];
    }

    void add(int year, int run, int tooOld, int refused, int bought) {
      old[year][run] += tooOld;
      rejected[year][run] += refused;
      buy[year][run] += bought;
    }

    List<Year> years(String size, int firstSeason) {
      List<Year> years = new ArrayList<>();
      for (int y = 0; y < buy.length; y++) {
        years.add(
            new Year(
                size, firstSeason + y, Band.of(old[y]), Band.of(rejected[y]), Band.of(buy[y])));
      }
      return List.copyOf(years);
    }
  }
}
