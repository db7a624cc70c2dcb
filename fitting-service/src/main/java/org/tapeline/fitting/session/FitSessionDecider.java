package org.tapeline.fitting.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocol.Check;
import org.tapeline.fitting.protocol.Protocol.Remedy;
import org.tapeline.fitting.session.FitSession.Helmet;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionCommand.Abandon;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionCommand.Fail;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.Open;
import org.tapeline.fitting.session.FitSessionCommand.Pass;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckPassed;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;

/**
 * The rules of a fit session. A pass needs every check of the protocol to have passed since the
 * last change that could have touched it; no answer is ever assumed.
 */
public final class FitSessionDecider {
  private static final Set<String> REASONS =
      Set.of("player-left", "weather", "interrupted", "mistake");

  private FitSessionDecider() {}

  public static Decision decide(FitSession state, FitSessionCommand command, Protocol protocol) {
    if (command instanceof Open open) {
      return open(state, open, protocol);
    }
    if (!state.open()) {
      return Decision.refused(
          "session-not-open", "This session is over. Open a new one for the player.");
    }
    return switch (command) {
      case Open open -> open(state, open, protocol);
      case TryHelmet attempt -> tryHelmet(state, attempt);
      case RecordCheck check -> recordCheck(state, check, protocol);
      case Adjust adjust -> adjust(state, adjust, protocol);
      case Pass pass -> pass(state, pass, protocol);
      case Fail fail -> fail(state, fail, protocol);
      case Abandon abandon ->
          REASONS.contains(abandon.why())
              ? Decision.accepted(
                  new SessionAbandoned(
                      state.session(), state.player(), abandon.why(), abandon.at()))
              : Decision.refused(
                  "why", "why", "Give one of: " + String.join(", ", new TreeSet<>(REASONS)) + ".");
    };
  }

  private static Decision open(FitSession state, Open open, Protocol protocol) {
    if (state.status() != Status.NOT_OPENED) {
      return Decision.refused("session-exists", "This session was opened before.");
    }
    return Decision.accepted(
        new SessionOpened(
            open.session(),
            open.player(),
            open.field(),
            open.team(),
            protocol.id(),
            protocol.version(),
            open.fitter(),
            open.advised(),
            open.at()));
  }

  private static Decision tryHelmet(FitSession state, TryHelmet attempt) {
    if (attempt.helmet().isEmpty()) {
      return Decision.refused(
          "helmet-unknown",
          "tag",
          "No helmet with the tag " + attempt.tag() + " is known here. Read the tag again.");
    }
    KnownHelmet helmet = attempt.helmet().get();
    if (helmet.refusal().isPresent()) {
      return Decision.refused("helmet-not-free", "tag", helmet.refusal().get());
    }
    if (!helmet.place().equals(state.field())) {
      return Decision.refused(
          "helmet-elsewhere",
          "tag",
          "By its record this helmet is at "
              + helmet.place()
              + ". Take one of this field, or have it moved first.");
    }
    if (!helmet.size().equals(attempt.sizeLabel())) {
      return Decision.refused(
          "size-label",
          "sizeLabel",
          "The record says "
              + helmet.size()
              + ". Read the label inside the shell again; when it really differs, put the helmet"
              + " aside and report it.");
    }
    return Decision.accepted(
        new HelmetTried(
            state.session(),
            state.player(),
            helmet.tag(),
            helmet.model(),
            helmet.size(),
            attempt.at()));
  }

  private static Decision recordCheck(FitSession state, RecordCheck answer, Protocol protocol) {
    Optional<Check> check = protocol.check(answer.check());
    if (check.isEmpty()) {
      return Decision.refused("check-unknown", "check", "The protocol has no such check.");
    }
    if (state.helmet().isEmpty()) {
      return Decision.refused("no-helmet", "Put a helmet on first: enter its tag.");
    }
    return Decision.accepted(
        new CheckRecorded(
            state.session(),
            state.player(),
            answer.check(),
            answer.passed() ? "pass" : "fail",
            answer.passed() ? Optional.empty() : Optional.of(check.get().axis()),
            answer.finding(),
            answer.valueMm(),
            answer.at()));
  }

  private static Decision adjust(FitSession state, Adjust adjust, Protocol protocol) {
    Optional<Remedy> remedy =
        protocol.check(adjust.check()).flatMap(c -> c.remedy(adjust.remedy()));
    if (remedy.isEmpty()) {
      return Decision.refused("remedy-unknown", "remedy", "The check has no such remedy.");
    }
    if (!state.failed(adjust.check())) {
      return Decision.refused("not-failed", "check", "A remedy goes with a check that failed.");
    }
    if (state.tried().contains(adjust.check() + "/" + adjust.remedy())) {
      return Decision.refused(
          "tried-before", "remedy", "That was tried on this helmet before. Try the next remedy.");
    }
    Set<String> voids = new TreeSet<>(remedy.get().voids());
    voids.add(adjust.check());
    Optional<String> item = adjust.item().or(() -> Optional.ofNullable(remedy.get().item()));
    return Decision.accepted(
        new AdjustmentMade(
            state.session(),
            state.player(),
            adjust.check(),
            adjust.remedy(),
            item,
            List.copyOf(voids),
            adjust.at()));
  }

  private static Decision pass(FitSession state, Pass pass, Protocol protocol) {
    if (state.helmet().isEmpty()) {
      return Decision.refused("no-helmet", "Put a helmet on first: enter its tag.");
    }
    List<String> open =
        protocol.checks().stream().filter(c -> !state.passed(c.id())).map(Check::question).toList();
    if (!open.isEmpty()) {
      return Decision.refused(
          "checks-open", "Still to be passed: " + String.join("; ", open) + ".");
    }
    Helmet helmet = state.helmet().get();
    List<CheckPassed> checks =
        protocol.checks().stream()
            .map(c -> new CheckPassed(c.id(), "pass", state.answers().get(c.id()).at()))
            .toList();
    return Decision.accepted(
        new FitPassed(
            state.session(),
            state.player(),
            state.field(),
            state.team(),
            helmet.tag(),
            helmet.model(),
            helmet.size(),
            state.fitter(),
            protocol.id(),
            protocol.version(),
            state.parts(),
            pass.conditions(),
            checks,
            pass.at()));
  }

  private static Decision fail(FitSession state, Fail fail, Protocol protocol) {
    List<Check> failed = protocol.checks().stream().filter(c -> state.failed(c.id())).toList();
    List<Need> needs =
        fail.needs().isEmpty() ? Needs.of(state, failed, fail.sizes()) : fail.needs();
    if (needs.isEmpty()) {
      return Decision.refused(
          "needs-unknown",
          "needs",
          "Say what the re-fit needs (a helmet of which size, which part), or record the check"
              + " that failed.");
    }
    List<String> ids = new ArrayList<>(failed.stream().map(Check::id).toList());
    return Decision.accepted(
        new FitFailed(
            state.session(),
            state.player(),
            state.field(),
            state.team(),
            state.helmet().map(Helmet::tag),
            state.helmet().map(Helmet::model),
            state.helmet().map(Helmet::size),
            state.fitter(),
            ids,
            needs,
            fail.at()));
  }
}
