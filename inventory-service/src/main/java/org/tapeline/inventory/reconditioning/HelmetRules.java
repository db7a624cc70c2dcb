package org.tapeline.inventory.reconditioning;

/** What the association's helmet policy says of a model. */
@FunctionalInterface
public interface HelmetRules {

  /** The rules for that model; cautious ones where it is not named. */
  ForModel of(String model);

  /**
   * Rules for a model.
   *
   * @param certifiedMonths how long a certification holds, 1 or more
   * @param lastAgeYears from this birthday on it is not worn, 1 or more
   */
  record ForModel(int certifiedMonths, int lastAgeYears) {
    public ForModel {
      if (certifiedMonths < 1 || lastAgeYears < 1) {
        throw new IllegalArgumentException("A helmet's interval and age are 1 or more");
      }
    }
  }
}
