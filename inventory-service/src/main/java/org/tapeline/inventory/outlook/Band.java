package org.tapeline.inventory.outlook;

import java.util.Arrays;

/**
 * A count that is not known for sure.
 *
 * @param low below it in at most 5 of 100 cases
 * @param middle as often below as above
 * @param high above it in at most 5 of 100 cases
 */
public record Band(int low, int middle, int high, double mean) {

  /** Of many equally likely counts. */
  static Band of(int[] counts) {
    int[] sorted = counts.clone();
    Arrays.sort(sorted);
    double mean = Arrays.stream(sorted).average().orElse(0);
    return new Band(at(sorted, 0.05), at(sorted, 0.5), at(sorted, 0.95), mean);
  }

  private static int at(int[] sorted, double share) {
    return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
  }

  /** {@code 3 to 9}, or {@code 4} when it is sure. */
  public String says() {
    return low == high ? String.valueOf(low) : low + " to " + high;
  }
}
