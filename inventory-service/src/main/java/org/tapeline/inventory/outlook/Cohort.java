package org.tapeline.inventory.outlook;

/**
 * Helmets of a size that leave together.
 *
 * @param lastSeason the last year in whose season they can be worn
 * @param goes which part of them goes to the reconditioner in a year, above 0 to 1
 * @param helmets how many, 0 or more
 */
public record Cohort(String size, int lastSeason, double goes, int helmets) {
  public Cohort {
    if (!(goes > 0 && goes <= 1) || helmets < 0) {
      throw new IllegalArgumentException("A cohort goes at most once a year");
    }
  }
}
