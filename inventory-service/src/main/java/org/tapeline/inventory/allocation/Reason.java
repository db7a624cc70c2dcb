package org.tapeline.inventory.allocation;

/**
 * Why players of a field get no helmet, for those who accept the same.
 *
 * @param reason in words, with the numbers
 * @param helps what would serve them
 */
public record Reason(String field, int players, String reason, String helps) {

  static Reason notMeasured(String field, int players) {
    return new Reason(field, players, "Nobody knows their size yet.", "Measure their heads");
  }
}
