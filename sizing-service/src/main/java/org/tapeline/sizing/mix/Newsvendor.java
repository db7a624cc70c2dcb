package org.tapeline.sizing.mix;

/**
 * How many to have of a thing whose need is uncertain: so many that one more would cost more than
 * it saves.
 *
 * @param tooFew cost of each that is missing, in the association's currency, above 0
 * @param tooMany cost of each that is left over, above 0
 */
public record Newsvendor(double tooFew, double tooMany) {

  public Newsvendor {
    if (!(tooFew > 0) || !(tooMany > 0)) {
      throw new IllegalArgumentException("Both costs are above 0");
    }
  }

  /** With what chance the need should be met. */
  public double ratio() {
    return tooFew / (tooFew + tooMany);
  }

  /** How many to have in all. */
  public int have(CountDistribution need) {
    return need.quantile(ratio());
  }

  /** How many to order when so many usable ones are there. */
  public int order(CountDistribution need, int there) {
    return Math.max(0, have(need) - there);
  }

  /** What is to be expected to be lost, by missing and by left over ones, with so many. */
  public double atRisk(CountDistribution need, int there) {
    double missing = need.expectedShort(there);
    double left = there - need.mean() + missing;
    return tooFew * missing + tooMany * left;
  }
}
