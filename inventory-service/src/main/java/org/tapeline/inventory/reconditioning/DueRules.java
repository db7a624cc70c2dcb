package org.tapeline.inventory.reconditioning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.inventory.reconditioning.Standing.Reason;
import org.tapeline.inventory.reconditioning.Standing.Why;

/**
 * When a helmet is due. From 2017 the maker states the recertification interval, and certification
 * lapses when it is missed (NOCSAE ND001); where no label was read, the policy's interval counts
 * from the day of manufacture, or from the last reconditioning, as the helmet policy has it. None
 * is accepted for reconditioning from the last age on (NAERA, from the 10th year after
 * manufacture).
 */
public final class DueRules {
  private DueRules() {}

  /**
   * @param by what is due through this day is named
   * @param nearDays a last age that is at most so many days after {@code by} is named too
   */
  public static Standing of(
      FleetHelmet helmet, HelmetRules.ForModel rules, LocalDate today, LocalDate by, int nearDays) {
    LocalDate interval =
        helmet
            .reconditionedOn()
            .orElse(helmet.manufacturedOn())
            .plusMonths(rules.certifiedMonths())
            .minusDays(1);
    LocalDate certified = helmet.certifiedUntil().orElse(interval);
    LocalDate lastAge = helmet.manufacturedOn().plusYears(rules.lastAgeYears()).minusDays(1);
    LocalDate wearable = certified.isBefore(lastAge) ? certified : lastAge;
    List<Reason> reasons = new ArrayList<>();
    if (!certified.isAfter(by) && helmet.certifiedUntil().isPresent()) {
      reasons.add(new Reason(Why.CERTIFICATION, certified));
    }
    if (!interval.isAfter(by)) {
      reasons.add(new Reason(Why.INTERVAL, interval));
    }
    if (!lastAge.isAfter(by.plusDays(nearDays))) {
      reasons.add(new Reason(Why.LAST_AGE, lastAge));
    }
    if (helmet.state().equals("quarantined")) {
      reasons.add(new Reason(Why.FINDINGS, today));
    }
    return new Standing(helmet, wearable, lastAge, List.copyOf(reasons));
  }
}
