package org.tapeline.inventory.compat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which part may go into which helmet: data, validated when it is read. What is not listed does not
 * fit: parts of two models are never mixed by default.
 *
 * @param version rises with each change
 * @param source where the table comes from
 */
public record PartCompatibility(int version, String source, List<Part> parts) {
  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  /**
   * A part.
   *
   * @param fits the helmet models it is made for, one or more
   * @param acrossModels whether a piece that is kept for one of these models may go into another of
   *     them; otherwise only pieces for the very model or for any
   */
  public record Part(String item, List<String> fits, boolean acrossModels) {

    /**
     * @throws IllegalArgumentException for a part without a model, or codes that are none
     */
    public Part {
      fits = fits == null ? List.of() : List.copyOf(fits);
      boolean codes =
          item != null && item.matches(CODE) && fits.stream().allMatch(m -> m.matches(CODE));
      if (!codes || fits.isEmpty() || new HashSet<>(fits).size() < fits.size()) {
        throw new IllegalArgumentException("A part needs a code and models, each once: " + item);
      }
    }
  }

  /**
   * @throws IllegalArgumentException for a table without version or source, or a part listed twice
   */
  public PartCompatibility {
    parts = parts == null ? List.of() : List.copyOf(parts);
    if (version < 1 || source == null || source.isBlank()) {
      throw new IllegalArgumentException("The compatibility table needs a version and a source");
    }
    Set<String> seen = new HashSet<>();
    for (Part part : parts) {
      if (!seen.add(part.item())) {
        throw new IllegalArgumentException("Listed twice: " + part.item());
      }
    }
  }

  private Optional<Part> find(String item) {
    return parts.stream().filter(p -> p.item().equals(item)).findFirst();
  }

  public boolean knows(String item) {
    return find(item).isPresent();
  }

  /** Whether that part may go into a helmet of that model at all. */
  public boolean fits(String item, String helmet) {
    return find(item).filter(p -> p.fits().contains(helmet)).isPresent();
  }

  /**
   * Whether a piece from that stock may go into a helmet of that model.
   *
   * @param keptFor the model that the stock is for; empty for any
   */
  public boolean fits(String item, String keptFor, String helmet) {
    boolean own = keptFor.isEmpty() || keptFor.equals(helmet);
    return fits(item, helmet) && (own || fits(item, keptFor) && acrossModels(item));
  }

  private boolean acrossModels(String item) {
    return find(item).filter(Part::acrossModels).isPresent();
  }

  /** The parts that may go into a helmet of that model, in the order of the table. */
  public List<String> itemsFor(String helmet) {
    return parts.stream().filter(p -> p.fits().contains(helmet)).map(Part::item).toList();
  }
}
