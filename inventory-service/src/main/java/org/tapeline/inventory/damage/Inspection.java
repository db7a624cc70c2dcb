package org.tapeline.inventory.damage;

import java.util.List;

/**
 * What was found, and what follows.
 *
 * @param outcome {@code back-to-stock} or {@code retire}
 * @param findings codes of the policy
 * @param parts codes of the parts that were put on, one for each piece
 */
public record Inspection(String outcome, List<String> findings, List<String> parts) {
  private static final String BACK = "back-to-stock";

  static final List<String> OUTCOMES = List.of(BACK, "retire");

  public Inspection {
    outcome = outcome == null ? "" : outcome;
    findings = clean(findings);
    parts = clean(parts);
  }

  private static List<String> clean(List<String> codes) {
    return codes == null
        ? List.of()
        : codes.stream().filter(c -> c != null && !c.isBlank()).map(String::strip).toList();
  }

  boolean backToStock() {
    return outcome.equals(BACK);
  }
}
