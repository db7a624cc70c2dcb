package org.tapeline.inventory.reconditioning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.tapeline.inventory.reconditioning.FleetHelmet.Kind;
import org.tapeline.inventory.reconditioning.Needs.At;

/**
 * The season's need from what others say. Sizing reckons the whole roster for each model alone, so
 * a model serves that part of it which is its share of the association's helmets. The cautious end
 * of the forecast counts (the need is above it in at most 5 of 100 cases), and so does a player at
 * a field, and who waits comes on top.
 */
public final class NeedRules {
  private NeedRules() {}

  /**
   * What is known.
   *
   * @param forecast the high end of the forecast by model and size, for the whole roster
   * @param advised players at a field by the size that is advised for them, a model at a time
   * @param waiting re-fit cases at a field that wait for such a helmet
   */
  public record Known(
      Map<Kind, Integer> forecast, Map<At, Integer> advised, Map<At, Integer> waiting) {}

  /**
   * @param spareShare 0 to 1, on top of forecast and advice
   */
  public static Needs of(Known known, List<FleetHelmet> fleet, double spareShare) {
    Map<String, Double> share = shares(known, fleet);
    Map<Kind, Integer> inAll = new HashMap<>();
    known
        .forecast()
        .forEach((kind, high) -> inAll.put(kind, up(high, share.get(kind.model()), spareShare)));
    Map<At, Integer> atPlace = new HashMap<>();
    known
        .advised()
        .forEach(
            (at, players) -> {
              double part = share.getOrDefault(at.kind().model(), 1.0);
              atPlace.put(at, up(players, part, spareShare));
            });
    known
        .waiting()
        .forEach(
            (at, cases) -> {
              atPlace.merge(at, cases, Integer::sum);
              inAll.computeIfPresent(at.kind(), (kind, need) -> need + cases);
            });
    return new Needs(inAll, atPlace);
  }

  /** Each model's part of the helmets of all models that have a forecast; 1 when none has any. */
  static Map<String, Double> shares(Known known, List<FleetHelmet> fleet) {
    Map<String, Double> share = new HashMap<>();
    known.forecast().keySet().forEach(kind -> share.put(kind.model(), 0.0));
    fleet.forEach(h -> share.computeIfPresent(h.model(), (model, n) -> n + 1));
    double all = share.values().stream().mapToDouble(n -> n).sum();
    share.replaceAll((model, n) -> all == 0 ? 1 : n / all);
    return share;
  }

  private static int up(int players, double share, double spareShare) {
    // Less than a thousandth of a helmet comes from binary fractions.
    return (int) Math.ceil(players * share * (1 + spareShare) - 1e-3);
  }
}
