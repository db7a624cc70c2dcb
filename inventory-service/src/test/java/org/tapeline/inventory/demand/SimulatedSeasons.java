package org.tapeline.inventory.demand;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.Random;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * An item at many fields over some seasons: the levels are made anew each week from what was used
 * till then, while the true rates and lead times are those of the world.
 */
final class SimulatedSeasons {
  private static final int WEEKS = 36;
  private static final double WEEK = 7;
  private static final double REVIEW = 2;

  private final World world;
  private final Random random;
  private final Result result = new Result();
  private LeadTime lead;

  /**
   * How it really is.
   *
   * @param priorRate pieces a player and week as the policy has it
   * @param trueTimes how many times that it is really, on average over the fields
   * @param fieldShape of the gamma distribution of the fields' rates around it
   * @param leadDays median; the policy has 3
   * @param size players at a place, as times of those of a field
   */
  record World(
      double priorRate,
      double trueTimes,
      double fieldShape,
      double leadDays,
      double leadSpread,
      int lot,
      double promised,
      int size) {}

  /** Pieces that were asked for, served at once, and promised to be. */
  static final class Result {
    long asked;
    long served;
    double promised;

    double achieved() {
      return (double) served / asked;
    }

    double promise() {
      return promised / asked;
    }

    void add(Result other) {
      asked += other.asked;
      served += other.served;
      promised += other.promised;
    }
  }

  private SimulatedSeasons(World world, long seed) {
    this.world = world;
    this.random = new Random(seed);
    this.lead = LeadTime.around(3, 4, 0.35);
  }

  static Result of(World world, int fields, long seed) {
    SimulatedSeasons seasons = new SimulatedSeasons(world, seed);
    for (int i = 0; i < fields; i++) {
      seasons.field();
    }
    return seasons.result;
  }

  private double uniform() {
    return Math.max(1e-12, random.nextDouble());
  }

  private void field() {
    int players = world.size * (30 + random.nextInt(90));
    double rate =
        GammaDistribution.of(world.fieldShape, world.priorRate * world.trueTimes / world.fieldShape)
            .inverseCumulativeProbability(uniform());
    DemandRate known = DemandRate.around(world.priorRate, 2);
    StockLevels levels = levels(known, players);
    Shelf shelf = new Shelf(levels.upTo());
    double next = gap(rate * players);
    for (double now = 0; now < WEEKS * WEEK; now += REVIEW) {
      int week = (int) (now / WEEK);
      if (now > 0 && week > (int) ((now - REVIEW) / WEEK)) {
        levels = levels(known.after(shelf.used, players * now / WEEK), players);
      }
      shelf.order(levels.order(shelf.position()), now);
      while (next < now + REVIEW) {
        shelf.take(next, levels.fillRate());
        next += gap(rate * players);
      }
    }
  }

  private double gap(double aWeek) {
    return -Math.log(uniform()) / aWeek * WEEK;
  }

  private StockLevels levels(DemandRate known, int players) {
    return StockLevels.keeping(world.promised, Horizon.of(known, players, lead, REVIEW), world.lot);
  }

  /** What is there, owed and coming. */
  private final class Shelf {
    private final PriorityQueue<double[]> coming =
        new PriorityQueue<>(Comparator.comparingDouble((double[] c) -> c[0]));
    private int net;
    private int onTheWay;
    private int used;

    Shelf(int pieces) {
      this.net = pieces;
    }

    int position() {
      return net + onTheWay;
    }

    void order(int pieces, double now) {
      if (pieces > 0) {
        double days = world.leadDays * Math.exp(world.leadSpread * random.nextGaussian());
        coming.add(new double[] {now + days, pieces});
        onTheWay += pieces;
        lead = lead.after(days);
      }
    }

    void take(double now, double promised) {
      while (!coming.isEmpty() && coming.peek()[0] <= now) {
        int came = (int) coming.remove()[1];
        net += came;
        onTheWay -= came;
      }
      result.asked++;
      result.served += net > 0 ? 1 : 0;
      result.promised += promised;
      net--;
      used++;
    }
  }
}
