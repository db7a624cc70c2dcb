package org.tapeline.fitting.session;

import static org.tapeline.fitting.session.Entry.given;
import static org.tapeline.fitting.session.Entry.opt;
import static org.tapeline.fitting.session.Entry.text;
import static org.tapeline.fitting.session.Entry.wrong;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Takes a fitter's commands, from pages and programs alike. */
@ApplicationScoped
public class SessionDesk {
  private final CommandLog commands;
  private final FitSessions sessions;
  private final Protocols protocols;
  private final SessionFacts facts;
  private final Caller caller;
  private final Clock clock;

  SessionDesk(
      CommandLog commands,
      FitSessions sessions,
      Protocols protocols,
      SessionFacts facts,
      Caller caller,
      Clock clock) {
    this.commands = commands;
    this.sessions = sessions;
    this.protocols = protocols;
    this.facts = facts;
    this.caller = caller;
    this.clock = clock;
  }

  Answer open(UUID id, SessionBody.Open body) {
    return commands.once(
        id,
        "open-session",
        given(body),
        () -> {
          PlayerCopy player = SessionFacts.player(text(body.player()));
          String field = text(body.field()).isEmpty() ? player.field : text(body.field());
          mustWorkAt(field);
          UUID session = opt(body.session()).orElseGet(() -> DerivedId.from(id, "session"));
          FitSessionCommand.Open open =
              new FitSessionCommand.Open(
                  session,
                  player.player,
                  field,
                  player.team,
                  caller.id(),
                  SessionFacts.advised(player),
                  at(body.enteredAt()));
          FitSession now = sessions.handle(session, player.player, open, Cause.command(id));
          return Answer.of(201, view(now));
        });
  }

  SessionView view(FitSession session) {
    return SessionView.of(session, next(session));
  }

  Proposal next(FitSession session) {
    return RemedyEngine.next(session, protocols.inForce(), () -> facts.here(session));
  }

  /** Whether the caller has it in hand. */
  boolean inHand(FitSession session) {
    return session.fitter().equals(caller.id());
  }

  Answer tryHelmet(UUID id, UUID session, SessionBody.Helmet body) {
    return on(id, session, "try-helmet", body, state -> helmet(state, body));
  }

  private FitSessionCommand helmet(FitSession state, SessionBody.Helmet body) {
    String tag = text(body.tag()).toUpperCase(Locale.ROOT).replace(" ", "");
    if (tag.isEmpty()) {
      throw wrong("tag", "Enter or scan the helmet's tag.");
    }
    String size = text(body.sizeLabel()).toLowerCase(Locale.ROOT).replace(' ', '-');
    if (size.isEmpty()) {
      throw wrong("sizeLabel", "Read the size on the label inside the shell and enter it.");
    }
    return new FitSessionCommand.TryHelmet(
        tag, facts.known(state, tag), size, at(body.enteredAt()));
  }

  Answer check(UUID id, UUID session, SessionBody.Answered body) {
    return on(
        id,
        session,
        "record-check",
        body,
        state -> {
          boolean pass = "pass".equals(body.result());
          if (!pass && !"fail".equals(body.result())) {
            throw wrong("result", "Answer with pass or fail.");
          }
          return new FitSessionCommand.RecordCheck(
              text(body.check()),
              pass,
              opt(body.axis()),
              opt(body.finding()),
              opt(body.valueMm()),
              at(body.enteredAt()));
        });
  }

  Answer adjust(UUID id, UUID session, SessionBody.Adjusted body) {
    return on(
        id,
        session,
        "adjust",
        body,
        state ->
            new FitSessionCommand.Adjust(
                text(body.check()), text(body.remedy()), opt(body.item()), at(body.enteredAt())));
  }

  Answer passOver(UUID id, UUID session, SessionBody.PassedOver body) {
    return on(
        id,
        session,
        "pass-over",
        body,
        state ->
            new FitSessionCommand.PassOver(
                text(body.check()),
                text(body.remedy()),
                opt(body.item()),
                text(body.why()),
                at(body.enteredAt())));
  }

  Answer correct(UUID id, UUID session, SessionBody.Corrected body) {
    return on(
        id,
        session,
        "correct",
        body,
        state ->
            new FitSessionCommand.Correct(
                text(body.check()), opt(body.remedy()), text(body.why()), at(body.enteredAt())));
  }

  Answer pause(UUID id, UUID session, SessionBody.Now body) {
    return on(
        id, session, "pause", body, state -> new FitSessionCommand.Pause(at(body.enteredAt())));
  }

  Answer resume(UUID id, UUID session, SessionBody.Now body) {
    return byAnybody(
        id,
        session,
        "resume",
        body,
        state -> new FitSessionCommand.Resume(caller.id(), at(body.enteredAt())));
  }

  Answer takeBack(UUID id, UUID session, SessionBody.Abandoned body) {
    return byAnybody(
        id,
        session,
        "take-back",
        body,
        state -> new FitSessionCommand.TakeBackPass(text(body.why()), at(body.enteredAt())));
  }

  Answer pass(UUID id, UUID session, SessionBody.Passed body) {
    return on(
        id,
        session,
        "pass",
        body,
        state ->
            new FitSessionCommand.Pass(
                state.helmet().flatMap(h -> facts.known(state, h.tag())),
                body.parts() == null ? List.of() : body.parts(),
                SessionFacts.conditions(state, body),
                FitSessionRow.lastEnded(state.player()),
                at(body.enteredAt())));
  }

  Answer fail(UUID id, UUID session, SessionBody.Failed body) {
    return on(
        id,
        session,
        "fail",
        body,
        state ->
            new FitSessionCommand.Fail(
                body.needs() == null ? List.of() : body.needs(),
                facts.here(state),
                at(body.enteredAt())));
  }

  Answer abandon(UUID id, UUID session, SessionBody.Abandoned body) {
    return byAnybody(
        id,
        session,
        "abandon",
        body,
        state -> new FitSessionCommand.Abandon(text(body.why()), at(body.enteredAt())));
  }

  /** Only whoever has the session in hand works on it: two fitters would undo each other's work. */
  private Answer on(
      UUID id,
      UUID session,
      String name,
      Object body,
      Function<FitSession, FitSessionCommand> command) {
    return byAnybody(
        id,
        session,
        name,
        body,
        state -> {
          if (state.unfinished() && !inHand(state)) {
            throw new Problem(
                409,
                "other-fitter",
                "Not in your hands",
                state.fitter() + " has this session in hand. Take it over to go on with it.",
                List.of());
          }
          return command.apply(state);
        });
  }

  /** Whoever works at the field. */
  private Answer byAnybody(
      UUID id,
      UUID session,
      String name,
      Object body,
      Function<FitSession, FitSessionCommand> command) {
    return commands.once(
        id,
        name + "/" + session,
        given(body),
        () -> {
          FitSession state = own(session);
          FitSession now =
              sessions.handle(session, state.player(), command.apply(state), Cause.command(id));
          return Answer.of(200, view(now));
        });
  }

  /**
   * @throws Problem when there is no such session or it is at another field
   */
  FitSession own(UUID session) {
    FitSession state = sessions.load(session);
    if (state.status() == FitSession.Status.NOT_OPENED) {
      throw Problem.notFound("There is no such session. Open one from the player's page.");
    }
    mustWorkAt(state.field());
    return state;
  }

  private void mustWorkAt(String field) {
    if (!caller.mayWorkAt(field)) {
      throw Problem.otherField("You do not work at the field " + field + ".");
    }
  }

  private Instant at(Optional<Instant> entered) {
    return EnteredAt.of(opt(entered), clock.instant());
  }
}
