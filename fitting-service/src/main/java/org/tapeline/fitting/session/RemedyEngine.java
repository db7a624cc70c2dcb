package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSession.Applied;
import org.tapeline.fitting.session.FitSession.Status;

/**
 * What to do next. Pure, and total: there is an answer for every session. Whoever follows it never
 * does a thing twice and comes to a pass, to a fail with named needs or to the measuring tape.
 */
public final class RemedyEngine {
  private RemedyEngine() {}

  public static Proposal next(FitSession state, Protocol protocol, Here here) {
    return next(state, protocol, () -> here);
  }

  /**
   * @param here asked for only where it matters: not while check after check passes
   */
  public static Proposal next(FitSession state, Protocol protocol, Supplier<Here> here) {
    if (state.status() == Status.PAUSED) {
      return new Proposal.Resume();
    }
    if (!state.open()) {
      return new Proposal.Nothing();
    }
    if (state.helmet().isEmpty()) {
      return HelmetMoves.first(state, here.get());
    }
    return failed(state, protocol)
        .map(check -> mend(state, check, protocol, here.get()))
        .orElseGet(() -> look(state, protocol));
  }

  /** What can be done for a failed check now, the proposed one first. */
  public static List<Proposal.Try> remedies(
      FitSession state, Check check, Protocol protocol, Here here) {
    List<Proposal.Try> all =
        RemediesLeft.of(state, check, protocol).stream().map(a -> attempt(state, a, here)).toList();
    return Stream.concat(
            all.stream().filter(Proposal.Try::onRecord),
            all.stream().filter(attempt -> !attempt.onRecord()))
        .toList();
  }

  private static Proposal.Try attempt(FitSession state, Applied a, Here here) {
    boolean onRecord = a.item().map(item -> here.has(item, state.partsUsed())).orElse(true);
    return new Proposal.Try(a.check(), a.remedy(), a.item(), onRecord);
  }

  /**
   * The failed check that is to be mended first. A helmet that is itself at fault comes before a
   * poor fit: it must not stay on the head.
   */
  public static Optional<Check> failed(FitSession state, Protocol protocol) {
    List<Check> failed = protocol.checks().stream().filter(c -> state.failed(c.id())).toList();
    return failed.stream()
        .filter(Check::standsUntilMended)
        .findFirst()
        .or(() -> failed.stream().findFirst());
  }

  private static Proposal mend(FitSession state, Check check, Protocol protocol, Here here) {
    Optional<Proposal.Try> attempt = remedies(state, check, protocol, here).stream().findFirst();
    if (attempt.isPresent()) {
      return attempt.get();
    }
    List<Need> needs = Needs.of(state, protocol, here);
    return RemediesLeft.missing(state, check).isEmpty()
        ? HelmetMoves.after(state, check, needs, here)
        : new Proposal.EndWithoutFit(needs);
  }

  private static Proposal look(FitSession state, Protocol protocol) {
    return protocol.checks().stream()
        .filter(c -> !state.passed(c.id()))
        .findFirst()
        .<Proposal>map(c -> new Proposal.Look(c.id()))
        .orElse(new Proposal.SignOff());
  }
}
