package org.tapeline.fitting.fitday;

/**
 * What a household's minutes are weighed against. Data: an association may weigh otherwise.
 *
 * @param travelMinutesPerDay a day more without a fit weighs as many minutes on the road, one way;
 *     1 to 240
 * @param minutesPerTrip what setting out at all costs a household, also to the own field; 0 to 240
 * @param farthestMinutes nobody is booked farther away than this, one way; 0 to 600
 * @param source where the figures are from
 */
public record BookingWeights(
    String id,
    int version,
    int travelMinutesPerDay,
    int minutesPerTrip,
    int farthestMinutes,
    String source) {

  /**
   * @throws IllegalArgumentException for a figure out of its range, or none of its source
   */
  public BookingWeights {
    mustLie("travelMinutesPerDay", travelMinutesPerDay, 1, 240);
    mustLie("minutesPerTrip", minutesPerTrip, 0, 240);
    mustLie("farthestMinutes", farthestMinutes, 0, 600);
    if (source == null || source.isBlank()) {
      throw new IllegalArgumentException("Say where the figures are from");
    }
  }

  private static void mustLie(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(what + " lies between " + least + " and " + most);
    }
  }
}
