package org.tapeline.fitting.session;

import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionCommand.Abandon;
import org.tapeline.fitting.session.FitSessionCommand.Adjust;
import org.tapeline.fitting.session.FitSessionCommand.Fail;
import org.tapeline.fitting.session.FitSessionCommand.Open;
import org.tapeline.fitting.session.FitSessionCommand.Pass;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
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
      case TryHelmet attempt -> HelmetRules.tryHelmet(state, attempt);
      case RecordCheck check ->
          otherProtocol(state, protocol)
              .orElseGet(() -> CheckRules.recordCheck(state, check, protocol));
      case Adjust adjust ->
          otherProtocol(state, protocol)
              .orElseGet(() -> CheckRules.adjust(state, adjust, protocol));
      case Pass pass ->
          otherProtocol(state, protocol).orElseGet(() -> ResultRules.pass(state, pass, protocol));
      case Fail fail -> ResultRules.fail(state, fail, protocol);
      case Abandon abandon -> abandon(state, abandon);
    };
  }

  /** Answers to one version of the protocol are no answers to another. */
  private static Optional<Decision> otherProtocol(FitSession state, Protocol protocol) {
    boolean same =
        state.protocol().equals(protocol.id()) && state.protocolVersion() == protocol.version();
    return same
        ? Optional.empty()
        : Optional.of(
            Decision.refused(
                "protocol-changed",
                "The fit protocol has changed since this session was opened. End it and open a"
                    + " new one."));
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
