package org.tapeline.inventory.allocation;

import java.util.Comparator;

/** Helmets that fit the same heads: a model in a size. */
public record Kind(String model, String size) implements Comparable<Kind> {
  private static final Comparator<Kind> ORDER =
      Comparator.comparing(Kind::model).thenComparing(Kind::size);

  @Override
  public int compareTo(Kind other) {
    return ORDER.compare(this, other);
  }

  /** As re-fit cases and restock requests name it. */
  public String item() {
    return "helmet:" + model + ":" + size;
  }
}
