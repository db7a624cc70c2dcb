package org.tapeline.inventory.allocation;

import java.util.List;
import org.tapeline.inventory.allocation.Seeker.Liking;

/**
 * What is weighed against what when helmets are handed to many players at once: data in {@code
 * policy/allocation.json}. All costs are in minutes on the road.
 *
 * @param version rises with each change
 * @param source where the figures come from
 * @param certification what a helmet costs that has few days left; the dearest that holds counts
 * @param waitedDays whoever has waited that long comes before whoever has not, among those of one
 *     urgency
 * @param spares helmets of a kind that a field keeps when that costs little
 * @param spareShare how many spares of a kind a field should have for each one worn there, 0 to 1
 * @param keptDays how long a committed plan keeps its helmets
 */
public record AllocationPolicy(
    int version,
    String source,
    Minutes minutes,
    List<Band> certification,
    List<Integer> waitedDays,
    int spares,
    double spareShare,
    int keptDays) {
  private static final int MOST = 10_000;

  /**
   * What things cost.
   *
   * @param handling packing and unpacking a helmet that has to travel
   * @param secondSize giving the second advised size
   * @param otherModel giving another model than was asked for
   * @param spare taking one of the last helmets of a kind from a field
   * @param farthest a way that is longer, or not known, counts as that long
   */
  public record Minutes(int handling, int secondSize, int otherModel, int spare, int farthest) {}

  /** A helmet with fewer days left costs so many minutes. */
  public record Band(int belowDays, int minutes) {}

  /**
   * @throws IllegalArgumentException for figures that make no sense
   */
  public AllocationPolicy {
    certification = List.copyOf(certification);
    waitedDays = List.copyOf(waitedDays);
    boolean costs =
        List.of(
                minutes.handling(),
                minutes.secondSize(),
                minutes.otherModel(),
                minutes.spare(),
                minutes.farthest())
            .stream()
            .allMatch(m -> m >= 0 && m <= MOST);
    boolean bands =
        certification.stream()
            .allMatch(b -> b.belowDays() > 0 && b.minutes() >= 0 && b.minutes() <= MOST);
    boolean waited = waitedDays.size() <= 5 && waitedDays.stream().allMatch(d -> d > 0);
    if (!costs
        || !bands
        || !waited
        || spares < 0
        || spareShare < 0
        || spareShare > 1
        || keptDays < 1
        || version < 1) {
      throw new IllegalArgumentException("policy/allocation.json: minutes from 0 to " + MOST);
    }
    if (source == null || source.isBlank()) {
      throw new IllegalArgumentException("policy/allocation.json needs a source");
    }
  }

  int ofLiking(Liking liking) {
    return switch (liking) {
      case ADVISED -> 0;
      case SECOND_SIZE -> minutes.secondSize();
      case OTHER_MODEL -> minutes.otherModel();
      case OTHER_MODEL_SECOND_SIZE -> minutes.otherModel() + minutes.secondSize();
    };
  }

  int ofDaysLeft(int days) {
    return certification.stream()
        .filter(band -> days < band.belowDays())
        .mapToInt(Band::minutes)
        .max()
        .orElse(0);
  }

  /** Packing and the way, for a helmet that is elsewhere. */
  int ofWay(Ways ways, String from, String to) {
    if (from.equals(to)) {
      return 0;
    }
    int way = ways.between(from, to).orElse(minutes.farthest());
    return minutes.handling() + Math.min(way, minutes.farthest());
  }

  /** How many spares a field should have where so many are worn: always a whole one more. */
  int spares(int worn) {
    return (int) Math.ceil(worn * spareShare - 1e-9);
  }

  /** Who comes first has the higher rank, 0 or more: the urgent, then who has waited longest. */
  int rank(boolean mustNotWear, long daysWaited) {
    int waited = (int) waitedDays.stream().filter(days -> daysWaited >= days).count();
    return (mustNotWear ? waitedDays.size() + 1 : 0) + waited;
  }

  /** No helmet costs a player more than that. */
  int dearest() {
    int band = certification.stream().mapToInt(Band::minutes).max().orElse(0);
    return minutes.handling()
        + minutes.farthest()
        + minutes.secondSize()
        + minutes.otherModel()
        + minutes.spare()
        + band;
  }
}
