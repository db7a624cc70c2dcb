package org.tapeline.fitting.session;

import java.util.Optional;

/**
 * Something that a re-fit needs.
 *
 * @param kind {@code helmet} with model and size, or {@code part} with its item
 */
public record Need(
    String kind, Optional<String> model, Optional<String> size, Optional<String> item) {

  public Need {
    boolean helmet = kind.equals("helmet") && model.isPresent() && size.isPresent();
    boolean part = kind.equals("part") && item.isPresent();
    if (!helmet && !part) {
      throw new IllegalArgumentException("A need is a helmet with model and size, or a part");
    }
  }

  public static Need helmet(String model, String size) {
    return new Need("helmet", Optional.of(model), Optional.of(size), Optional.empty());
  }

  public static Need part(String item) {
    return new Need("part", Optional.empty(), Optional.empty(), Optional.of(item));
  }

  /** What it is, as one word: the same need of the same case has the same key. */
  public String key() {
    return kind.equals("helmet") ? "helmet:" + model.get() + ":" + size.get() : item.get();
  }
}
