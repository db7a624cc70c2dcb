package org.tapeline.inventory.place;

import java.math.BigDecimal;
import java.util.List;

/**
 * A place with the ways from it.
 *
 * @param kind {@code field} or {@code depot}
 * @param altitudeM metres above sea level
 * @param zone its time zone, such as {@code America/Denver}
 */
public record PlaceListed(
    String place, String name, String kind, BigDecimal altitudeM, String zone, List<Way> travel) {

  /**
   * A way to another place.
   *
   * @param minutes 0 or more
   */
  public record Way(String to, int minutes) {}
}
