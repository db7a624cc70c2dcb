package org.tapeline.fitting.session;

import java.util.Set;
import java.util.function.Supplier;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionCommand.Abandon;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionCommand.AtWork;
import org.tapeline.fitting.session.FitSessionCommand.Correct;
import org.tapeline.fitting.session.FitSessionCommand.Fail;
import org.tapeline.fitting.session.FitSessionCommand.Open;
import org.tapeline.fitting.session.FitSessionCommand.Pass;
import org.tapeline.fitting.session.FitSessionCommand.PassOver;
import org.tapeline.fitting.session.FitSessionCommand.Pause;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionCommand.Resume;
import org.tapeline.fitting.session.FitSessionCommand.TakeBackPass;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;
import org.tapeline.fitting.session.FitSessionEvent.SessionPaused;
import org.tapeline.fitting.session.FitSessionEvent.SessionResumed;

/**
 * The rules of a fit session. A pass needs every check of the protocol to have passed since the
 * last change that could have touched it; no answer is ever assumed.
 */
public final class FitSessionDecider {
  private static final Set<String> REASONS =
      Set.of("player-left", "weather", "interrupted", "mistake");

  private FitSessionDecider() {}

  public static Decision decide(FitSession state, FitSessionCommand command, Protocol protocol) {
    return switch (command) {
      case Open open -> open(state, open, protocol);
      case AtWork work -> state.open() ? atWork(state, work, protocol) : notOpen(state);
      case Resume resume -> resume(state, resume);
      case Abandon abandon -> state.unfinished() ? abandon(state, abandon) : notOpen(state);
      case TakeBackPass back -> CorrectionRules.takeBack(state, back);
    };
  }

  private static Decision atWork(FitSession state, AtWork command, Protocol protocol) {
    return switch (command) {
      case TryHelmet attempt -> HelmetRules.tryHelmet(state, attempt);
      case Fail fail -> ResultRules.fail(state, fail, protocol);
      case Pause pause ->
          Decision.accepted(new SessionPaused(state.session(), state.player(), pause.at()));
      case RecordCheck check ->
          same(state, protocol, () -> CheckRules.recordCheck(state, check, protocol));
      case Adjust adjust ->
          same(state, protocol, () -> AdjustRules.adjust(state, adjust, protocol));
      case PassOver over ->
          same(state, protocol, () -> PassOverRules.passOver(state, over, protocol));
      case Correct correct ->
          same(state, protocol, () -> CorrectionRules.correct(state, correct, protocol));
      case Pass pass -> same(state, protocol, () -> ResultRules.pass(state, pass, protocol));
    };
  }

  private static Decision notOpen(FitSession state) {
    return state.status() == Status.PAUSED
        ? Decision.refused("session-paused", "This session was put aside. Go on with it first.")
        : Decision.refused(
            "session-not-open", "This session is over. Open a new one for the player.");
  }

  private static Decision resume(FitSession state, Resume c) {
    if (!state.unfinished()) {
      return notOpen(state);
    }
    return state.open() && state.fitter().equals(c.fitter())
        ? Decision.refused("in-hand", "You have this session in hand already. Go on with it.")
        : Decision.accepted(
            new SessionResumed(state.session(), state.player(), c.fitter(), c.at()));
  }

  private static Decision same(FitSession state, Protocol protocol, Supplier<Decision> decision) {
    return state.openedWith(protocol)
        ? decision.get()
        : Decision.refused(
            "protocol-changed",
            "The fit protocol has changed since this session was opened. End it and open a new"
                + " one.");
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

  private static Decision abandon(FitSession state, Abandon abandon) {
    return REASONS.contains(abandon.why())
        ? Decision.accepted(
            new SessionAbandoned(state.session(), state.player(), abandon.why(), abandon.at()))
        : Decision.refused("why", "why", Decision.oneOf(REASONS));
  }
}
