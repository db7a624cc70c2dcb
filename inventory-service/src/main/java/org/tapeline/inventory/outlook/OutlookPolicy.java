package org.tapeline.inventory.outlook;

/**
 * What the outlook assumes: data in {@code policy/outlook.json}.
 *
 * @param version rises with each change
 * @param source where the figures come from
 * @param years how far it looks, 1 to 10
 * @param runs how many seasons are played through, 200 to 20000
 * @param seed the same seed gives the same outlook
 * @param growthMean by how much the roster grows in a year, such as 0.02; -0.5 to 0.5
 * @param growthSd how unsure that is, one standard deviation, 0 to 0.5
 * @param priorRejected rejected helmets that are taken as seen before the first batch, above 0
 * @param priorCertified certified ones that are taken as seen before the first batch, above 0
 * @param priceCents what a new helmet costs, in hundredths of the association's currency
 */
public record OutlookPolicy(
    int version,
    String source,
    int years,
    int runs,
    long seed,
    double growthMean,
    double growthSd,
    double priorRejected,
    double priorCertified,
    long priceCents) {

  /**
   * @throws IllegalArgumentException that names the figure which cannot be
   */
  public OutlookPolicy {
    check(version >= 1 && source != null && !source.isBlank(), "version and source are needed");
    check(years >= 1 && years <= 10, "years is from 1 to 10");
    check(runs >= 200 && runs <= 20_000, "runs is from 200 to 20000");
    check(Math.abs(growthMean) <= 0.5, "growthMean is from -0.5 to 0.5");
    check(growthSd >= 0 && growthSd <= 0.5, "growthSd is from 0 to 0.5");
    check(priorRejected > 0 && priorCertified > 0, "the prior's counts are above 0");
    check(priceCents >= 0, "priceCents is 0 or more");
  }

  private static void check(boolean good, String otherwise) {
    if (!good) {
      throw new IllegalArgumentException("outlook.json: " + otherwise);
    }
  }
}
