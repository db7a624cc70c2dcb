package org.tapeline.fitting.session;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.roster.ModelSize;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.session.FitSessionPage.Templates;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Which screen of a session is shown, and what stands on it. */
@ApplicationScoped
class SessionScreens {
  private final Protocols protocols;
  private final SessionDesk desk;

  SessionScreens(Protocols protocols, SessionDesk desk) {
    this.protocols = protocols;
    this.desk = desk;
  }

  /**
   * What every screen of a session shows.
   *
   * @param problem what was wrong with what was sent; empty for nothing
   * @param done checks that count as passed now, of {@code all}
   */
  record Screen(
      FitSession session,
      String player,
      String advised,
      UUID commandId,
      String problem,
      int done,
      int all) {
    public String status() {
      return session.status().name();
    }

    public UUID id() {
      return session.session();
    }

    public UUID playerId() {
      return session.player();
    }

    public boolean helmetOn() {
      return session.helmet().isPresent();
    }

    public String tag() {
      return session.helmet().map(FitSession.Helmet::tag).orElse("");
    }

    public String helmet() {
      return session
          .helmet()
          .map(h -> h.tag() + ", " + Words.model(h.model()) + " " + Words.size(h.size()))
          .orElse("none");
    }

    public List<String> parts() {
      return session.parts().stream().map(Words::item).toList();
    }
  }

  /**
   * The check at hand.
   *
   * @param remedies those that were not tried on this helmet yet, in order
   * @param number its place in the protocol, from 1
   */
  record CheckScreen(
      Check check, boolean failed, String finding, List<Remedy> remedies, int number) {
    /** A button for "looks right now" makes no sense where only a remedy helps. */
    public boolean mayPass() {
      return !failed || !check.standsUntilMended();
    }

    public boolean helmetUnsafe() {
      return failed && check.standsUntilMended();
    }
  }

  TemplateInstance template(FitSession session, String check, String step, String problem) {
    Screen screen = screen(session, problem);
    if (!session.open()) {
      return Templates.result(screen);
    }
    if (session.helmet().isEmpty() && !"fail".equals(step) || "helmet".equals(step)) {
      return Templates.helmet(
          screen, HelmetChoice.of(session, desk.today(session)), ModelSize.allSizes());
    }
    if ("fail".equals(step)) {
      return fail(session, screen);
    }
    return checkAtHand(session, check)
        .map(at -> Templates.check(screen, at))
        .orElseGet(() -> Templates.pass(screen));
  }

  private TemplateInstance fail(FitSession session, Screen screen) {
    List<Check> failed =
        protocols.inForce().checks().stream().filter(c -> session.failed(c.id())).toList();
    List<String> needs =
        Needs.of(session, failed, SessionDesk.sizes(session)).stream()
            .map(SessionScreens::said)
            .toList();
    return Templates.fail(screen, failed.stream().map(Check::question).toList(), needs);
  }

  private static String said(Need need) {
    return need.needsHelmet()
        ? Words.model(need.model().get()) + " " + Words.size(need.size().get())
        : Words.item(need.item().get());
  }

  private Screen screen(FitSession session, String problem) {
    PlayerCopy player = PlayerCopy.findById(session.player());
    Protocol protocol = protocols.inForce();
    int done = (int) protocol.checks().stream().filter(c -> session.passed(c.id())).count();
    return new Screen(
        session,
        player == null ? "erased" : player.name(),
        HelmetChoice.advised(session),
        UuidV7.next(),
        problem,
        done,
        protocol.checks().size());
  }

  /** The one that was asked for, else the first that has not passed; none when all have. */
  private Optional<CheckScreen> checkAtHand(FitSession session, String wanted) {
    Protocol protocol = protocols.inForce();
    return Optional.ofNullable(wanted)
        .flatMap(protocol::check)
        .filter(c -> !session.passed(c.id()))
        .or(() -> protocol.checks().stream().filter(c -> !session.passed(c.id())).findFirst())
        .map(c -> checkScreen(session, c, protocol.checks().indexOf(c) + 1));
  }

  private static CheckScreen checkScreen(FitSession session, Check check, int number) {
    String finding = session.finding(check.id());
    List<Remedy> left =
        check.remedies(finding).stream().filter(r -> !session.tried(check.id(), r.id())).toList();
    String said = check.way(finding).map(Check.Way::said).orElse("");
    return new CheckScreen(check, session.failed(check.id()), said, left, number);
  }

  /**
   * @throws Problem when it is not a temperature
   */
  static Optional<Double> celsius(String typed) {
    if (typed == null || typed.isBlank()) {
      return Optional.empty();
    }
    String plain = typed.strip().replace(',', '.').replace('\u2212', '-');
    if (!plain.matches("-?[0-9]{1,2}(\\.[0-9])?")) {
      String message = "Air temperature in degrees Celsius, such as 21, or leave it empty.";
      throw new Problem(
          422, "entry", "Not recorded", message, List.of(new FieldError("airCelsius", message)));
    }
    return Optional.of(Double.valueOf(plain));
  }
}
