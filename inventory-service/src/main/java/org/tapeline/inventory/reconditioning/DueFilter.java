package org.tapeline.inventory.reconditioning;

import org.tapeline.inventory.reconditioning.BatchPlan.Shelf;

/** What is looked for; what is empty does not matter. */
public record DueFilter(String place, String model, String size) {
  public DueFilter {
    place = place == null ? "" : place.strip();
    model = model == null ? "" : model.strip();
    size = size == null ? "" : size.strip();
  }

  boolean fits(FleetHelmet h) {
    return fits(place, h.place()) && fits(model, h.model()) && fits(size, h.size());
  }

  boolean fits(Shelf s) {
    return s.place().map(p -> fits(place, p)).orElse(true)
        && fits(model, s.kind().model())
        && fits(size, s.kind().size());
  }

  private static boolean fits(String wanted, String is) {
    return wanted.isEmpty() || wanted.equals(is);
  }
}
