package org.tapeline.fitting.evidence;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.session.FitSessionEvent;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;
import org.tapeline.fitting.session.FitSessionEvent.EntryCorrected;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;
import org.tapeline.fitting.session.FitSessionEvent.RemedyPassedOver;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;
import org.tapeline.fitting.session.FitSessionEvent.SessionPaused;
import org.tapeline.fitting.session.FitSessionEvent.SessionResumed;

/**
 * What was done at a sign-off, from the events of its session alone. Whoever asks later who fitted
 * what, when, and what was checked is answered from this.
 *
 * @param answers the answer that counted for every check of the protocol, in its order
 * @param steps what was tried before it passed: helmets, failed checks and remedies, in time's
 *     order
 */
public record Evidence(
    UUID session,
    UUID player,
    String team,
    String field,
    String tag,
    String model,
    String size,
    List<String> parts,
    String fitter,
    String protocol,
    int protocolVersion,
    Conditions conditions,
    List<Answer> answers,
    List<Step> steps,
    Instant at) {

  /**
   * The answer to a check that counted.
   *
   * @param valueMm what was measured, millimetres
   */
  public record Answer(String check, String result, Optional<Double> valueMm, Instant at) {}

  /** Something that was tried. */
  public sealed interface Step {
    Instant at();
  }

  /** A helmet was put on. */
  public record HelmetOn(String tag, String model, String size, Instant at) implements Step {}

  /** A check failed; {@code finding} says how. */
  public record Failed(String check, Optional<String> finding, Optional<Double> valueMm, Instant at)
      implements Step {}

  /** A remedy was applied for a failed check; {@code item} is the part that it took. */
  public record Remedied(String check, String remedy, Optional<String> item, Instant at)
      implements Step {}

  /** A remedy was not possible; {@code why} says whether for want of a part. */
  public record PassedOver(
      String check, String remedy, Optional<String> item, String why, Instant at) implements Step {}

  /** An answer, or with a remedy an adjustment, was a mistake and taken back. */
  public record TakenBack(String check, Optional<String> remedy, String why, Instant at)
      implements Step {}

  /** The session was put aside. */
  public record Aside(Instant at) implements Step {}

  /** A fitter, the same or another, went on with it. */
  public record InHandsOf(String fitter, Instant at) implements Step {}

  public Evidence {
    parts = List.copyOf(parts);
    answers = List.copyOf(answers);
    steps = List.copyOf(steps);
  }

  /** Empty for a session that did not end with a fit. */
  public static Optional<Evidence> of(List<FitSessionEvent> session) {
    Map<String, CheckRecorded> newest = new HashMap<>();
    List<Step> steps = new ArrayList<>();
    Optional<FitPassed> passed = Optional.empty();
    for (FitSessionEvent event : session) {
      switch (event) {
        case SessionOpened e -> steps.clear();
        case HelmetTried e -> steps.add(new HelmetOn(e.tag(), e.model(), e.size(), e.at()));
        case CheckRecorded e -> {
          newest.put(e.check(), e);
          failed(e).ifPresent(steps::add);
        }
        case AdjustmentMade e -> steps.add(new Remedied(e.check(), e.remedy(), e.item(), e.at()));
        case RemedyPassedOver e ->
            steps.add(new PassedOver(e.check(), e.remedy(), e.item(), e.why(), e.at()));
        case EntryCorrected e -> steps.add(new TakenBack(e.check(), e.remedy(), e.why(), e.at()));
        case SessionPaused e -> steps.add(new Aside(e.at()));
        case SessionResumed e -> steps.add(new InHandsOf(e.fitter(), e.at()));
        case FitPassed e -> passed = Optional.of(e);
        // What was done stays what was done; that the sign-off ended stands in its own stream.
        case PassTakenBack e -> {}
        case FitFailed e -> passed = Optional.empty();
        case SessionAbandoned e -> passed = Optional.empty();
      }
    }
    return passed.map(p -> of(p, newest, steps));
  }

  private static Optional<Step> failed(CheckRecorded e) {
    return e.result().equals("pass")
        ? Optional.empty()
        : Optional.of(new Failed(e.check(), e.finding(), e.valueMm(), e.at()));
  }

  private static Evidence of(FitPassed p, Map<String, CheckRecorded> newest, List<Step> steps) {
    List<Answer> answers =
        p.checks().stream()
            .map(
                c ->
                    new Answer(
                        c.check(),
                        c.result(),
                        Optional.ofNullable(newest.get(c.check())).flatMap(CheckRecorded::valueMm),
                        c.at()))
            .toList();
    return new Evidence(
        p.session(),
        p.player(),
        p.team(),
        p.field(),
        p.tag(),
        p.model(),
        p.size(),
        p.parts(),
        p.fitter(),
        p.protocol(),
        p.protocolVersion(),
        p.conditions(),
        answers,
        steps,
        p.at());
  }
}
