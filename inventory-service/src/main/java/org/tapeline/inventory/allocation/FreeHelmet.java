package org.tapeline.inventory.allocation;

/**
 * A helmet that can be given to somebody.
 *
 * @param place where it is
 * @param daysLeft until its certification or its last age ends, whichever is first; 0 or more, 0
 *     when that is not known
 */
public record FreeHelmet(String tag, Kind kind, String place, int daysLeft) {

  /**
   * @throws IllegalArgumentException for one that may not be worn any more
   */
  public FreeHelmet {
    if (daysLeft < 0) {
      throw new IllegalArgumentException(tag + " may not be worn any more");
    }
  }
}
