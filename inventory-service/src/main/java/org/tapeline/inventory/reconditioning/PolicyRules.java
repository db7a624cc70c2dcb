package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;

/** Cautious rules for all models. */
@ApplicationScoped
public class PolicyRules implements HelmetRules {
  @Override
  public ForModel of(String model) {
    return new ForModel(12, 9);
  }
}
