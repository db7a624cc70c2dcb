package org.tapeline.fitting.protocol;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A fit protocol: the checks in the order in which they are worked through. Data, so that an
 * association can have its own.
 *
 * @param id such as {@code youth-football}
 * @param version rises with each change
 */
public record Protocol(String id, int version, String title, List<Check> checks) {

  /**
   * One thing to look at.
   *
   * @param question what to look at
   * @param how how to do it, short
   * @param pass what the passing answer is
   * @param axis what it is about: front-back, sides, crown-height, jaw, chin-strap, hardware
   * @param source where the check is from, or {@code common practice}
   * @param remedies what to try when it fails, in order
   * @param need what the re-fit needs when no remedy helps
   */
  public record Check(
      String id,
      String question,
      String how,
      String pass,
      String axis,
      String source,
      List<Remedy> remedies,
      Need need) {

    public Optional<Remedy> remedy(String remedyId) {
      return remedies.stream().filter(r -> r.id().equals(remedyId)).findFirst();
    }

    /** A finding that no remedy may paper over: the helmet itself is unsafe. */
    public boolean aboutTheHelmetItself() {
      return axis.equals("hardware");
    }
  }

  /**
   * Something to try.
   *
   * @param voids checks that must be done again afterwards; the check itself always must
   * @param item the part that it takes from stock; {@code null} for none
   */
  public record Remedy(String id, String text, List<String> voids, String item) {}

  /** What is needed when a check cannot be made to pass. */
  public enum Need {
    SMALLER_HELMET,
    LARGER_HELMET,
    OTHER_HELMET,
    JAW_PAD,
    CHIN_STRAP,
    HARDWARE_KIT
  }

  /**
   * Refuses a protocol that could let a player through: no checks, an id twice, a remedy that voids
   * an unknown check, a check without a way out.
   *
   * @throws IllegalArgumentException with what is wrong
   */
  public Protocol {
    checks = List.copyOf(checks);
    if (checks.isEmpty() || version < 1) {
      throw new IllegalArgumentException("A protocol has a version and checks");
    }
    Set<String> ids = new HashSet<>();
    for (Check check : checks) {
      if (!ids.add(check.id())) {
        throw new IllegalArgumentException("Check " + check.id() + " stands twice");
      }
      if (check.need() == null) {
        throw new IllegalArgumentException("Check " + check.id() + " has no way out");
      }
    }
    for (Check check : checks) {
      for (Remedy remedy : check.remedies()) {
        if (!ids.containsAll(remedy.voids())) {
          throw new IllegalArgumentException(
              "Remedy " + remedy.id() + " of " + check.id() + " voids an unknown check");
        }
      }
    }
  }

  public Optional<Check> check(String checkId) {
    return checks.stream().filter(c -> c.id().equals(checkId)).findFirst();
  }
}
