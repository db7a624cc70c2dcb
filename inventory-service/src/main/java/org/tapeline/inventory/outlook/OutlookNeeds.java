package org.tapeline.inventory.outlook;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reconditioning.FleetHelmet;

/** The need of each size, from sizing's forecast taken as what a season needs. */
@ApplicationScoped
public class OutlookNeeds {
  /** From the middle to the 95 % end of a normal distribution, in standard deviations. */
  private static final double TO_95 = 1.6449;

  private final Database database;

  OutlookNeeds(Database database) {
    this.database = database;
  }

  private record Told(String model, String size, double expected, int low, int high) {}

  /**
   * Small to large. Sizing reckons the whole roster for each model alone; a model counts by its
   * share of the helmets.
   */
  List<SizeNeed> bySize(List<FleetHelmet> helmets, double spareShare) {
    List<Told> told =
        database.list(
            "select * from size_forecast order by place_in_chart, model",
            row ->
                new Told(
                    row.getString("model"),
                    row.getString("size"),
                    row.getDouble("expected"),
                    row.getInt("low"),
                    row.getInt("high")));
    Map<String, Double> share = shares(told, helmets);
    Map<String, double[]> bySize = new LinkedHashMap<>();
    for (Told t : told) {
      double part = share.get(t.model());
      double sd = part * (t.high() - t.low()) / (2 * TO_95);
      double[] sum = bySize.computeIfAbsent(t.size(), s -> new double[2]);
      sum[0] += part * t.expected() * (1 + spareShare);
      sum[1] += sd * sd;
    }
    List<SizeNeed> needs = new ArrayList<>();
    bySize.forEach((size, sum) -> needs.add(new SizeNeed(size, sum[0], Math.sqrt(sum[1]))));
    return needs;
  }

  private static Map<String, Double> shares(List<Told> told, List<FleetHelmet> helmets) {
    Map<String, Double> share = new HashMap<>();
    told.forEach(t -> share.put(t.model(), 0.0));
    helmets.forEach(h -> share.computeIfPresent(h.model(), (model, n) -> n + 1));
    double all = share.values().stream().mapToDouble(n -> n).sum();
    share.replaceAll((model, n) -> all == 0 ? 1.0 / share.size() : n / all);
    return share;
  }
}
