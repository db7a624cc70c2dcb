package org.tapeline.fitting.session;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.fitting.access.CommandId;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.problem.Problem;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** The fit check on a phone: a helmet, then one check at a time, then the result. */
@Path("/sessions")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class FitSessionPage {
  private final SessionDesk desk;
  private final Protocols protocols;
  private final Transactions transactions;

  FitSessionPage(SessionDesk desk, Protocols protocols, Transactions transactions) {
    this.desk = desk;
    this.protocols = protocols;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "session")
  static class Templates {
    private Templates() {}

    static native TemplateInstance helmet(Screen screen, List<HelmetCopy> helmets);

    static native TemplateInstance check(Screen screen, CheckScreen check);

    static native TemplateInstance result(Screen screen);
  }

  /** What every screen of a session shows. */
  public record Screen(
      FitSession session,
      String player,
      String advised,
      UUID commandId,
      String problem,
      int done,
      int all) {}

  /** The check at hand. */
  public record CheckScreen(
      Protocol.Check check, boolean failed, List<Protocol.Remedy> remedies, int number) {}

  @POST
  public Response open(@RestForm String commandId, @RestForm String player) {
    UUID id = CommandId.of(commandId);
    Answer answer = desk.open(id, new SessionDesk.OpenBody(player, null));
    String session = answer.json().replaceAll(".*\"session\":\"([0-9a-f-]{36})\".*", "$1");
    return Response.seeOther(URI.create("/fitting/sessions/" + session)).build();
  }

  @GET
  @Path("/{session}")
  @Consumes(MediaType.WILDCARD)
  public String show(@PathParam("session") UUID session, @QueryParam("check") String check) {
    return page(session, check, "");
  }

  @POST
  @Path("/{session}/helmet")
  public Response helmet(
      @PathParam("session") UUID session,
      @RestForm String commandId,
      @RestForm String tag,
      @RestForm String sizeLabel) {
    UUID id = CommandId.of(commandId);
    return then(
        session,
        null,
        () -> desk.tryHelmet(id, session, new SessionDesk.HelmetBody(tag, sizeLabel)));
  }

  @POST
  @Path("/{session}/checks/{check}")
  public Response check(
      @PathParam("session") UUID session,
      @PathParam("check") String check,
      @RestForm String commandId,
      @RestForm String result,
      @RestForm String finding) {
    UUID id = CommandId.of(commandId);
    Optional<String> found = Optional.ofNullable(finding).filter(f -> !f.isBlank());
    String stay = "fail".equals(result) ? check : null;
    return then(
        session,
        stay,
        () ->
            desk.check(
                id, session, new SessionDesk.CheckBody(check, result, found, Optional.empty())));
  }

  @POST
  @Path("/{session}/checks/{check}/adjust")
  public Response adjust(
      @PathParam("session") UUID session,
      @PathParam("check") String check,
      @RestForm String commandId,
      @RestForm String remedy) {
    UUID id = CommandId.of(commandId);
    return then(
        session,
        check,
        () ->
            desk.adjust(id, session, new SessionDesk.AdjustBody(check, remedy, Optional.empty())));
  }

  @POST
  @Path("/{session}/pass")
  public Response pass(
      @PathParam("session") UUID session,
      @RestForm String commandId,
      @RestForm String airCelsius,
      @RestForm String hair) {
    UUID id = CommandId.of(commandId);
    Optional<Double> air =
        airCelsius != null && airCelsius.matches("-?[0-9]{1,2}(\\.[0-9])?")
            ? Optional.of(Double.valueOf(airCelsius))
            : Optional.empty();
    return then(
        session,
        null,
        () -> desk.pass(id, session, new SessionDesk.PassBody(air, Optional.ofNullable(hair))));
  }

  @POST
  @Path("/{session}/fail")
  public Response fail(@PathParam("session") UUID session, @RestForm String commandId) {
    UUID id = CommandId.of(commandId);
    return then(session, null, () -> desk.fail(id, session, new SessionDesk.FailBody(List.of())));
  }

  @POST
  @Path("/{session}/abandon")
  public Response abandon(
      @PathParam("session") UUID session, @RestForm String commandId, @RestForm String why) {
    UUID id = CommandId.of(commandId);
    return then(session, null, () -> desk.abandon(id, session, new SessionDesk.AbandonBody(why)));
  }

  /** After a command the next screen, or the same one with what is wrong. */
  private Response then(UUID session, String check, Supplier<Answer> command) {
    try {
      command.get();
      String where = "/fitting/sessions/" + session + (check == null ? "" : "?check=" + check);
      return Response.seeOther(URI.create(where)).build();
    } catch (Problem problem) {
      if (problem.status() == 403 || problem.status() == 404) {
        throw problem;
      }
      return Response.status(problem.status())
          .entity(page(session, check, problem.getMessage()))
          .build();
    }
  }

  private String page(UUID id, String wantedCheck, String problem) {
    return transactions.required(
        c -> {
          FitSession session = desk.own(id);
          Screen screen = screen(session, problem);
          if (!session.open()) {
            return Templates.result(screen).render();
          }
          if (session.helmet().isEmpty()) {
            return Templates.helmet(screen, HelmetChoice.of(session)).render();
          }
          return checkAtHand(session, wantedCheck)
              .map(check -> Templates.check(screen, check).render())
              .orElseGet(() -> Templates.result(screen).render());
        });
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
    Optional<Protocol.Check> check =
        Optional.ofNullable(wanted)
            .flatMap(protocol::check)
            .filter(c -> !session.passed(c.id()))
            .or(() -> protocol.checks().stream().filter(c -> !session.passed(c.id())).findFirst());
    return check.map(
        c ->
            new CheckScreen(
                c,
                session.failed(c.id()),
                c.remedies().stream()
                    .filter(r -> !session.tried().contains(c.id() + "/" + r.id()))
                    .toList(),
                protocol.checks().indexOf(c) + 1));
  }
}
