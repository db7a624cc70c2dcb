package org.tapeline.inventory.outlook;

/**
 * How many helmets of a size a season needs, as the roster is now.
 *
 * @param expected the mean, spare ones included
 * @param sd how unsure it is, one standard deviation
 */
public record SizeNeed(String size, double expected, double sd) {
  public SizeNeed {
    if (!(expected >= 0) || !(sd >= 0)) {
      throw new IllegalArgumentException("A need and its uncertainty are 0 or more");
    }
  }
}
