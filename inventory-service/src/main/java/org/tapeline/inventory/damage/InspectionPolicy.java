package org.tapeline.inventory.damage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What an inspection may find, and with which of it a helmet may go back to stock: data, validated
 * when it is read. A finding that is not listed is refused.
 *
 * @param version rises with each change
 * @param source where the rules come from
 */
public record InspectionPolicy(int version, String source, List<Finding> findings) {
  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  /**
   * A finding.
   *
   * @param means what is meant, in a few words
   * @param mayGoBack whether a helmet with it may go back to stock
   * @param why why it may not; empty when it may
   * @param needsPart whether a part must be named that was put on
   * @param alone whether no other finding goes with it
   */
  public record Finding(
      String code,
      String said,
      String means,
      boolean mayGoBack,
      String why,
      boolean needsPart,
      boolean alone) {
    public Finding {
      why = why == null ? "" : why;
    }
  }

  /** What is wrong with an inspection as it was entered, beside which field. */
  public record Wrong(String field, String sentence) {}

  /**
   * @throws IllegalArgumentException for findings without code or words, listed twice, that forbid
   *     without saying why, or of which none lets a helmet go back
   */
  public InspectionPolicy {
    findings = findings == null ? List.of() : List.copyOf(findings);
    if (version < 1 || source == null || source.isBlank()) {
      throw new IllegalArgumentException("Inspections need a version and a source");
    }
    Set<String> seen = new HashSet<>();
    for (Finding f : findings) {
      boolean words = f.said() != null && !f.said().isBlank() && f.means() != null;
      if (f.code() == null || !f.code().matches(CODE) || !words || !seen.add(f.code())) {
        throw new IllegalArgumentException("A finding without code or words, or twice: " + f);
      }
      if (!f.mayGoBack() && f.why().isBlank()) {
        throw new IllegalArgumentException("Says not why it may not go back: " + f.code());
      }
    }
    if (findings.stream().noneMatch(Finding::mayGoBack)) {
      throw new IllegalArgumentException("No finding lets a helmet go back to stock");
    }
  }

  private Optional<Finding> find(String code) {
    return findings.stream().filter(f -> f.code().equals(code)).findFirst();
  }

  /** The words for a finding; those of a code that is not listed are the code. */
  public String said(String code) {
    return find(code).map(Finding::said).orElse(code);
  }

  /** What is wrong with what was found and what shall follow; empty when nothing is. */
  public List<Wrong> check(boolean backToStock, List<String> codes, List<String> parts) {
    List<Finding> found = codes.stream().flatMap(code -> find(code).stream()).toList();
    List<Wrong> wrong = new ArrayList<>();
    codes.stream()
        .filter(code -> find(code).isEmpty())
        .map(code -> "There is no finding " + code + ". Choose from the list.")
        .forEach(sentence -> wrong.add(new Wrong("findings", sentence)));
    if (backToStock) {
      found.stream()
          .filter(f -> !f.mayGoBack())
          .map(f -> "It cannot go back to stock. " + f.why())
          .forEach(sentence -> wrong.add(new Wrong("outcome", sentence)));
    }
    if (found.size() > 1 && found.stream().anyMatch(Finding::alone)) {
      wrong.add(new Wrong("findings", "\"Nothing found\" does not go with another finding."));
    }
    wrong.addAll(checkParts(found.stream().anyMatch(Finding::needsPart), parts));
    return wrong;
  }

  private static List<Wrong> checkParts(boolean needsPart, List<String> parts) {
    if (needsPart && parts.isEmpty()) {
      return List.of(new Wrong("parts", "Name the part that was put on."));
    }
    if (!needsPart && !parts.isEmpty()) {
      return List.of(new Wrong("parts", "Choose also that a part was replaced, or name no part."));
    }
    return List.of();
  }
}
