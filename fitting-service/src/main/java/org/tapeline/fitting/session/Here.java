package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;

/**
 * What is at the field, as far as the records tell, and what is advised now.
 *
 * @param parts pieces of each part by the records; 0 for what is not named
 * @param helmets those that this player may have; the ones kept for the player are put first
 * @param sizes the sizes of each model, small to large
 * @param advised by sizing, the first choice of each model first; a near edge brings a second size
 * @param measuredAt when the newest advice was given; empty when the head was never measured
 */
public record Here(
    Map<String, Integer> parts,
    List<FreeHelmet> helmets,
    Map<String, List<String>> sizes,
    List<AdvisedSize> advised,
    Optional<Instant> measuredAt) {

  /** A helmet that this player may have. */
  public record FreeHelmet(String tag, String model, String size, boolean kept) {}

  public static final Here NOTHING =
      new Here(Map.of(), List.of(), Map.of(), List.of(), Optional.empty());

  public Here {
    parts = Map.copyOf(parts);
    helmets = helmets.stream().sorted(Comparator.comparing(h -> !h.kept())).toList();
    sizes = Map.copyOf(sizes);
    advised = List.copyOf(advised);
  }

  boolean has(String item, List<String> used) {
    return parts.getOrDefault(item, 0) > used.stream().filter(item::equals).count();
  }

  List<String> sizesOf(String model) {
    return sizes.getOrDefault(model, List.of());
  }

  boolean advises(String model, String size) {
    return advised.contains(new AdvisedSize(model, size));
  }

  List<String> tagsOf(String model, String size) {
    return helmets.stream()
        .filter(h -> h.model().equals(model) && h.size().equals(size))
        .map(FreeHelmet::tag)
        .toList();
  }
}
