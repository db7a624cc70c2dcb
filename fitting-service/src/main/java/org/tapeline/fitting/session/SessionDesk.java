package org.tapeline.fitting.session;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.access.Caller;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.problem.Problem;
import org.tapeline.fitting.problem.Problem.FieldError;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.ModelSize;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;

/** Takes a fitter's commands, from pages and programs alike, and looks up the facts they need. */
@ApplicationScoped
public class SessionDesk {
  private final CommandLog commands;
  private final FitSessions sessions;
  private final Caller caller;
  private final Clock clock;

  SessionDesk(CommandLog commands, FitSessions sessions, Caller caller, Clock clock) {
    this.commands = commands;
    this.sessions = sessions;
    this.caller = caller;
    this.clock = clock;
  }

  /** Body of the command to open a session; the field is the player's own where none is given. */
  public record OpenBody(String player, String field) {}

  /** Body of the command to try a helmet. */
  public record HelmetBody(String tag, String sizeLabel) {}

  /** Body of the answer to a check. */
  public record CheckBody(
      String check, String result, Optional<String> finding, Optional<Double> valueMm) {}

  /** Body of an adjustment. */
  public record AdjustBody(String check, String remedy, Optional<String> item) {}

  /** Body of a pass. */
  public record PassBody(Optional<Double> airCelsius, Optional<String> hair) {}

  /** Body of a fail; without needs they follow from the checks that failed. */
  public record FailBody(List<Need> needs) {}

  /** Body of giving up. */
  public record AbandonBody(String why) {}

  public Answer open(UUID id, OpenBody body) {
    return commands.once(
        id,
        "open-session",
        body,
        () -> {
          PlayerCopy player = player(body.player());
          String field =
              body.field() == null || body.field().isBlank() ? player.field : body.field();
          mustWorkAt(field);
          UUID session = DerivedId.from(id, "session");
          List<FitSessionEvent.AdvisedSize> advised =
              AdvisedSizeCopy.of(player.player).stream()
                  .filter(a -> a.size != null)
                  .map(a -> new FitSessionEvent.AdvisedSize(a.model, a.size))
                  .toList();
          FitSession now =
              sessions.handle(
                  session,
                  player.player,
                  new FitSessionCommand.Open(
                      session,
                      player.player,
                      field,
                      player.team,
                      caller.id(),
                      advised,
                      clock.instant()),
                  Cause.command(id));
          return Answer.of(201, SessionView.of(now));
        });
  }

  public Answer tryHelmet(UUID id, UUID session, HelmetBody body) {
    return on(
        id,
        session,
        "try-helmet",
        body,
        state -> {
          String tag = text(body.tag()).toUpperCase().replace(" ", "");
          if (tag.isEmpty()) {
            throw missing("tag", "Enter or scan the helmet's tag.");
          }
          Optional<HelmetCopy> known = HelmetCopy.<HelmetCopy>findByIdOptional(tag);
          Optional<FitSessionCommand.KnownHelmet> helmet =
              known
                  .filter(h -> h.model != null)
                  .map(
                      h ->
                          new FitSessionCommand.KnownHelmet(
                              h.tag, h.model, h.size, h.place, h.refusalFor(state.player())));
          return new FitSessionCommand.TryHelmet(
              tag, helmet, text(body.sizeLabel()), clock.instant());
        });
  }

  public Answer check(UUID id, UUID session, CheckBody body) {
    return on(
        id,
        session,
        "record-check",
        body,
        state -> {
          boolean pass = "pass".equals(body.result());
          if (!pass && !"fail".equals(body.result())) {
            throw missing("result", "Answer with pass or fail.");
          }
          return new FitSessionCommand.RecordCheck(
              text(body.check()),
              pass,
              given(body.finding()),
              given(body.valueMm()),
              clock.instant());
        });
  }

  public Answer adjust(UUID id, UUID session, AdjustBody body) {
    return on(
        id,
        session,
        "adjust",
        body,
        state ->
            new FitSessionCommand.Adjust(
                text(body.check()), text(body.remedy()), given(body.item()), clock.instant()));
  }

  public Answer pass(UUID id, UUID session, PassBody body) {
    return on(
        id,
        session,
        "pass",
        body,
        state -> {
          Place place = Place.findById(state.field());
          Optional<Double> altitude = Optional.ofNullable(place).map(p -> p.altitudeM);
          return new FitSessionCommand.Pass(
              new FitSessionEvent.Conditions(given(body.airCelsius()), altitude, hair(body.hair())),
              clock.instant());
        });
  }

  public Answer fail(UUID id, UUID session, FailBody body) {
    return on(
        id,
        session,
        "fail",
        body,
        state -> {
          String model =
              state
                  .helmet()
                  .map(FitSession.Helmet::model)
                  .or(() -> state.advised().stream().findFirst().map(a -> a.model()))
                  .orElse("");
          List<Need> needs = body.needs() == null ? List.of() : body.needs();
          return new FitSessionCommand.Fail(needs, ModelSize.of(model), clock.instant());
        });
  }

  public Answer abandon(UUID id, UUID session, AbandonBody body) {
    return on(
        id,
        session,
        "abandon",
        body,
        state -> new FitSessionCommand.Abandon(text(body.why()), clock.instant()));
  }

  /** What the command is, given the session. */
  private interface Making {
    FitSessionCommand of(FitSession state);
  }

  private Answer on(UUID id, UUID session, String name, Object body, Making making) {
    return commands.once(
        id,
        name + "/" + session,
        body == null ? Map.of() : body,
        () -> {
          FitSession state = own(session);
          if (body == null) {
            throw missing("body", "Send a JSON body.");
          }
          FitSession now =
              sessions.handle(session, state.player(), making.of(state), Cause.command(id));
          return Answer.of(200, SessionView.of(now));
        });
  }

  /**
   * @throws Problem when there is no such session or it is at another field
   */
  public FitSession own(UUID session) {
    FitSession state = sessions.load(session);
    if (state.status() == FitSession.Status.NOT_OPENED) {
      throw Problem.notFound("There is no such session. Open one from the player's page.");
    }
    mustWorkAt(state.field());
    return state;
  }

  private static PlayerCopy player(String reference) {
    return PlayerCopy.find(text(reference))
        .filter(p -> p.field != null && p.onRoster)
        .orElseThrow(
            () -> Problem.notFound("No player " + text(reference) + " is on the roster here."));
  }

  private void mustWorkAt(String field) {
    if (!caller.mayWorkAt(field)) {
      throw new Problem(
          403,
          "other-field",
          "Not your field",
          "You do not work at the field " + field + ".",
          List.of());
    }
  }

  private static Optional<String> hair(Optional<String> hair) {
    Optional<String> given = given(hair).filter(h -> !h.isBlank());
    if (given.isPresent() && !List.of("usual", "short", "long", "braids").contains(given.get())) {
      throw missing("hair", "One of usual, short, long and braids.");
    }
    return given;
  }

  private static <T> Optional<T> given(Optional<T> value) {
    return value == null ? Optional.empty() : value;
  }

  private static String text(String value) {
    return value == null ? "" : value.strip();
  }

  private static Problem missing(String field, String message) {
    return new Problem(
        422, "entry", "Not recorded", message, List.of(new FieldError(field, message)));
  }
}
