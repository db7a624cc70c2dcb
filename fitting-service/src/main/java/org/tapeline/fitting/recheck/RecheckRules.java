package org.tapeline.fitting.recheck;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which re-checks a sign-off has ahead, by the plan and what happened since. Worked out when it is
 * asked for. A cause from before the sign-off is over: the fit was checked since.
 */
public final class RecheckRules {
  private RecheckRules() {}

  /**
   * The fit that the sign-off rests on, with the air as far as it was recorded.
   *
   * @param airCelsius degrees Celsius
   * @param altitudeM metres
   */
  public record Fit(Instant at, Optional<Double> airCelsius, Optional<Double> altitudeM) {}

  /**
   * The player's field now.
   *
   * @param airCelsius the newest temperature that was told, however old
   * @param measuredAt when it was so warm
   */
  public record Field(
      Optional<Double> airCelsius, Optional<Instant> measuredAt, Optional<Double> altitudeM) {
    public static final Field UNKNOWN =
        new Field(Optional.empty(), Optional.empty(), Optional.empty());

    /** Old conditions no longer count. */
    public Field asOf(Instant now, RecheckPlan plan) {
      boolean counts =
          measuredAt.filter(at -> !now.isAfter(at.plus(plan.conditionsHold()))).isPresent();
      return counts ? this : new Field(Optional.empty(), Optional.empty(), altitudeM);
    }
  }

  /** When each thing last happened, if ever. */
  public record Causes(
      Optional<Instant> hairChangedAt,
      Optional<Instant> nearEdgeAt,
      Optional<Instant> remeasureDueAt,
      Optional<Instant> cosmeticDamageAt,
      Field field) {
    public static final Causes NONE =
        new Causes(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Field.UNKNOWN);
  }

  /**
   * A check that is due or will be.
   *
   * @param cause when the cause happened
   * @param lapsesAt from then on the sign-off no longer holds; empty when it does not end it
   */
  public record Check(
      Trigger trigger, Instant cause, Instant dueAt, Optional<Instant> lapsesAt, String said) {
    public boolean due(Instant now) {
      return !now.isBefore(dueAt);
    }

    public boolean lapsed(Instant now) {
      return lapsesAt.filter(at -> !now.isBefore(at)).isPresent();
    }
  }

  /** All checks of a sign-off that holds: the weekly one always, and one for each cause. */
  public static List<Check> checks(RecheckPlan plan, Fit fit, Causes causes, Instant now) {
    List<Check> checks = new ArrayList<>();
    checks.add(check(plan, Trigger.WEEKLY, fit.at()));
    since(plan, Trigger.HAIR_CHANGED, fit, causes.hairChangedAt()).ifPresent(checks::add);
    since(plan, Trigger.NEAR_EDGE, fit, causes.nearEdgeAt()).ifPresent(checks::add);
    since(plan, Trigger.REMEASURE_DUE, fit, causes.remeasureDueAt()).ifPresent(checks::add);
    since(plan, Trigger.COSMETIC_DAMAGE, fit, causes.cosmeticDamageAt()).ifPresent(checks::add);
    air(plan, fit, causes.field().asOf(now, plan)).ifPresent(checks::add);
    return List.copyOf(checks);
  }

  private static Optional<Check> since(
      RecheckPlan plan, Trigger trigger, Fit fit, Optional<Instant> cause) {
    return cause.filter(at -> !at.isBefore(fit.at())).map(at -> check(plan, trigger, at));
  }

  private static Check check(RecheckPlan plan, Trigger trigger, Instant cause) {
    RecheckPlan.Rule rule = plan.rule(trigger);
    return new Check(trigger, cause, rule.dueAt(cause), rule.lapsesAt(cause), rule.said());
  }

  /** What is not recorded is not guessed: it changes nothing here and is told on the page. */
  private static Optional<Check> air(RecheckPlan plan, Fit fit, Field field) {
    double warmth = part(fit.airCelsius(), field.airCelsius(), Air::byTemperature);
    double height = part(fit.altitudeM(), field.altitudeM(), Air::byAltitude);
    double change = 100 * (warmth * height - 1);
    Trigger trigger = blamed(warmth, height);
    double enough = plan.rule(trigger).roomChangePercent().orElseThrow();
    if (Math.abs(change) < enough) {
      return Optional.empty();
    }
    Instant cause = field.measuredAt().filter(at -> at.isAfter(fit.at())).orElse(fit.at());
    return Optional.of(check(plan, trigger, cause));
  }

  private interface Part {
    double of(double atFit, double now);
  }

  private static double part(Optional<Double> atFit, Optional<Double> now, Part part) {
    return atFit.isPresent() && now.isPresent() ? part.of(atFit.get(), now.get()) : 1;
  }

  /** Of temperature and altitude the one that moves the room more, the way it moved. */
  private static Trigger blamed(double warmth, double height) {
    boolean less = warmth * height < 1;
    boolean byWarmth = less ? warmth <= height : warmth >= height;
    if (less) {
      return byWarmth ? Trigger.COLDER : Trigger.LOWER;
    }
    return byWarmth ? Trigger.HOTTER : Trigger.HIGHER;
  }
}
