package org.tapeline.fitting.session;

import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.roster.ModelSize;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.session.FitSessionPage.Templates;
import org.tapeline.journal.UuidV7;

/** Which screen of a session is shown, and what stands on it. */
@ApplicationScoped
class SessionScreens {
  private final Protocols protocols;
  private final SessionDesk desk;
  private final SessionFacts facts;

  SessionScreens(Protocols protocols, SessionDesk desk, SessionFacts facts) {
    this.protocols = protocols;
    this.desk = desk;
    this.facts = facts;
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

  TemplateInstance template(FitSession session, String check, String step, String problem) {
    Screen screen = screen(session, problem);
    if (!session.unfinished()) {
      return Templates.result(screen);
    }
    if (!session.open() || !desk.inHand(session)) {
      return Templates.aside(screen, session.fitter(), session.open());
    }
    if (session.helmet().isEmpty() && !"fail".equals(step) || "helmet".equals(step)) {
      return Templates.helmet(
          screen, HelmetChoice.of(session, facts.today(session)), ModelSize.allSizes());
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
        Needs.of(session, protocols.inForce(), facts.here(session)).stream()
            .map(CheckScreen::said)
            .toList();
    return Templates.fail(screen, failed.stream().map(Check::question).toList(), needs);
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
        .map(c -> CheckScreen.of(session, c, protocol, () -> facts.here(session)));
  }
}
