package org.tapeline.inventory.reconditioning;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.UUID;
import org.tapeline.inventory.reconditioning.BatchPlan.Shelf;
import org.tapeline.journal.UuidV7;

/**
 * The list of what is due as its page shows it.
 *
 * @param going by place; a batch goes from one place
 * @param waiting the first of those that wait
 * @param waits how many wait
 */
public record DueView(
    Asked asked,
    DueFilter filter,
    BatchPlan plan,
    List<FromPlace> going,
    List<DueRow> waiting,
    int waits,
    List<Shelf> shelves) {
  /** More rows than this nobody reads; the CSV file has all. */
  static final int MOST = 300;

  /** What goes from a place. */
  public record FromPlace(String place, List<DueRow> rows, int more, UUID commandId) {}

  static DueView of(Asked asked, DueFilter filter, BatchPlan plan, int mostPerBatch) {
    TreeMap<String, List<DueRow>> byPlace = new TreeMap<>();
    List<DueRow> waiting = new ArrayList<>();
    for (BatchPlan.Step step : plan.steps()) {
      if (!filter.fits(step.standing().helmet())) {
        continue;
      }
      if (step.goes()) {
        List<DueRow> rows =
            byPlace.computeIfAbsent(step.standing().helmet().place(), p -> new ArrayList<>());
        rows.add(DueRow.of(step, rows.size() < mostPerBatch));
      } else {
        waiting.add(DueRow.of(step, false));
      }
    }
    List<FromPlace> going = new ArrayList<>();
    byPlace.forEach(
        (place, rows) -> going.add(new FromPlace(place, first(rows), more(rows), UuidV7.next())));
    List<Shelf> shelves =
        plan.shelves().stream()
            .filter(s -> s.usable() > 0 || s.need().orElse(0) > 0)
            .filter(s -> filter.fits(s))
            .toList();
    return new DueView(asked, filter, plan, going, first(waiting), waiting.size(), shelves);
  }

  /** What was asked, for the address of the CSV file. */
  public String query() {
    return "by="
        + asked.by()
        + "&on="
        + asked.on()
        + "&place="
        + encoded(filter.place())
        + "&model="
        + encoded(filter.model())
        + "&size="
        + encoded(filter.size());
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static List<DueRow> first(List<DueRow> rows) {
    return List.copyOf(rows.subList(0, Math.min(MOST, rows.size())));
  }

  private static int more(List<DueRow> rows) {
    return Math.max(0, rows.size() - MOST);
  }
}
