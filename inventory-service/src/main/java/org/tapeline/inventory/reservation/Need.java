package org.tapeline.inventory.reservation;

import java.util.Optional;

/**
 * Something that a re-fit needs.
 *
 * @param kind {@code helmet} with model and size, or {@code part} with its item
 */
public record Need(
    String kind, Optional<String> model, Optional<String> size, Optional<String> item) {

  /**
   * @throws IllegalArgumentException for what cannot be looked for in stock
   */
  public Need {
    model = model == null ? Optional.empty() : model;
    size = size == null ? Optional.empty() : size;
    item = item == null ? Optional.empty() : item;
    boolean helmet = "helmet".equals(kind) && model.isPresent() && size.isPresent();
    boolean part = "part".equals(kind) && item.isPresent();
    if (!helmet && !part) {
      throw new IllegalArgumentException("A need is a helmet with model and size, or a part");
    }
  }

  public boolean ofHelmet() {
    return kind.equals("helmet");
  }

  /** What it is, as one word: {@code helmet:<model>:<size>} or the part's code. */
  public String key() {
    return ofHelmet() ? "helmet:" + model.get() + ":" + size.get() : item.get();
  }
}
