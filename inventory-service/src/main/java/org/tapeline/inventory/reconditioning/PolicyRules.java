package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.inventory.policy.HelmetPolicy;
import org.tapeline.inventory.policy.HelmetPolicyFile;

/** The rules of the association's helmet policy. */
@ApplicationScoped
public class PolicyRules implements HelmetRules {
  private final HelmetPolicyFile policy;

  PolicyRules(HelmetPolicyFile policy) {
    this.policy = policy;
  }

  @Override
  public ForModel of(String model) {
    HelmetPolicy.Rule rule = policy.get().of(model);
    return new ForModel(rule.certifiedMonths(), rule.lastAgeYears());
  }
}
