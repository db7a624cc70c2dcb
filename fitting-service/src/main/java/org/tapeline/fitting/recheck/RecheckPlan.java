package org.tapeline.fitting.recheck;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * When the fit of a player who is signed off is looked at again. Data: an association may be
 * stricter.
 *
 * @param conditionsHoldHours how long a field's air temperature counts, 1 to 48 hours
 * @param dueSoonDays how many days ahead a check is shown as due soon, 0 to 7
 * @param rules one for each trigger
 */
public record RecheckPlan(
    String id, int version, int conditionsHoldHours, int dueSoonDays, List<Rule> rules) {

  /**
   * What one trigger leads to.
   *
   * @param trigger its code
   * @param title the trigger in words
   * @param dueAfterDays days of 24 hours after the cause from which on "check today", 0 for at once
   * @param lapsesAfterDays days after the cause from which on "do not wear"; empty only for air,
   *     which the weather gives back
   * @param roomChangePercent for air: how much more or less room it takes, per cent, at least
   * @param said why the check is due, as the list says it
   * @param source where the figures are from
   */
  public record Rule(
      String trigger,
      String title,
      int dueAfterDays,
      Optional<Integer> lapsesAfterDays,
      Optional<Double> roomChangePercent,
      String said,
      String source) {

    /**
     * @throws IllegalArgumentException for a rule that says too little, or by which a sign-off
     *     would hold for ever
     */
    public Rule {
      lapsesAfterDays = lapsesAfterDays == null ? Optional.empty() : lapsesAfterDays;
      roomChangePercent = roomChangePercent == null ? Optional.empty() : roomChangePercent;
      Trigger cause =
          Trigger.of(trigger)
              .orElseThrow(() -> new IllegalArgumentException("No such trigger: " + trigger));
      words(trigger, title, said, source);
      times(cause, dueAfterDays, lapsesAfterDays);
      boolean sensible = roomChangePercent.filter(p -> p >= 1 && p <= 20).isPresent();
      if (cause.air() ? !sensible : roomChangePercent.isPresent()) {
        throw new IllegalArgumentException(
            "Rules for air, and only they, say a change of room of 1 to 20 per cent: " + trigger);
      }
    }

    private static void words(String trigger, String... words) {
      if (Arrays.stream(words).anyMatch(w -> w == null || w.isBlank())) {
        throw new IllegalArgumentException("A rule needs title, words and source: " + trigger);
      }
    }

    private static void times(Trigger cause, int due, Optional<Integer> lapses) {
      int first = cause == Trigger.WEEKLY ? 1 : 0;
      if (due < first || due > 31) {
        throw new IllegalArgumentException("A re-check is due within 31 days: " + cause.code());
      }
      if (cause == Trigger.SUSPECTED_CONCUSSION) {
        if (due != 0 || !lapses.equals(Optional.of(0))) {
          throw new IllegalArgumentException("A suspected concussion means out of play at once");
        }
      } else if (lapses.isEmpty() ? !cause.air() : lapses.get() <= due || lapses.get() > 62) {
        throw new IllegalArgumentException(
            "A sign-off lapses after it is due, within 62 days: " + cause.code());
      }
    }

    public Trigger cause() {
      return Trigger.of(trigger).orElseThrow();
    }

    public Instant dueAt(Instant cause) {
      return cause.plus(Duration.ofDays(dueAfterDays));
    }

    public Optional<Instant> lapsesAt(Instant cause) {
      return lapsesAfterDays.map(days -> cause.plus(Duration.ofDays(days)));
    }
  }

  /**
   * @throws IllegalArgumentException for a plan that leaves a trigger out or says it twice
   */
  public RecheckPlan {
    rules = List.copyOf(rules);
    for (Trigger trigger : Trigger.values()) {
      if (rules.stream().filter(rule -> rule.cause() == trigger).count() != 1) {
        throw new IllegalArgumentException("One rule is needed for " + trigger.code());
      }
    }
    if (conditionsHoldHours < 1 || conditionsHoldHours > 48) {
      throw new IllegalArgumentException("Conditions of a field hold for 1 to 48 hours");
    }
    if (version < 1 || dueSoonDays < 0 || dueSoonDays > 7) {
      throw new IllegalArgumentException("A plan has a version, and is soon due within 7 days");
    }
  }

  public Rule rule(Trigger trigger) {
    return rules.stream().filter(rule -> rule.cause() == trigger).findFirst().orElseThrow();
  }

  public Duration conditionsHold() {
    return Duration.ofHours(conditionsHoldHours);
  }
}
