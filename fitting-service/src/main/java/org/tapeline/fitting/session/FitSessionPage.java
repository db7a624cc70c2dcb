package org.tapeline.fitting.session;

import com.fasterxml.jackson.core.JsonProcessingException;
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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** The fit check on a phone: a helmet, then one check at a time, then the result. */
@Path("/sessions")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class FitSessionPage {
  private static final String FAIL = "fail-";

  private final SessionDesk desk;
  private final SessionScreens screens;
  private final Transactions transactions;

  FitSessionPage(SessionDesk desk, SessionScreens screens, Transactions transactions) {
    this.desk = desk;
    this.screens = screens;
    this.transactions = transactions;
  }

  @CheckedTemplate(basePath = "session")
  static class Templates {
    private Templates() {}

    static native TemplateInstance helmet(
        SessionScreens.Screen screen, List<HelmetChoice> helmets, List<String> sizes);

    static native TemplateInstance check(SessionScreens.Screen screen, CheckScreen check);

    static native TemplateInstance pass(SessionScreens.Screen screen);

    static native TemplateInstance fail(
        SessionScreens.Screen screen, List<String> failed, List<String> needs);

    static native TemplateInstance aside(SessionScreens.Screen screen, String fitter, boolean open);

    static native TemplateInstance result(SessionScreens.Screen screen);
  }

  @POST
  public Response open(@RestForm String commandId, @RestForm String player) {
    UUID id = CommandId.of(commandId);
    Answer answer =
        desk.open(id, new SessionBody.Open(player, null, Optional.empty(), Optional.empty()));
    return Answers.goTo("/fitting/sessions/" + sessionOf(answer));
  }

  private static String sessionOf(Answer answer) {
    try {
      return EventJson.MAPPER.readTree(answer.json()).get("session").asText();
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * @param step {@code helmet} to put on another one, {@code fail} to end without a fit
   */
  @GET
  @Path("/{session}")
  @Consumes(MediaType.WILDCARD)
  public String show(
      @PathParam("session") UUID session,
      @QueryParam("check") String check,
      @QueryParam("step") String step) {
    return page(session, check, step, "");
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
        "helmet",
        () ->
            desk.tryHelmet(id, session, new SessionBody.Helmet(tag, sizeLabel, Optional.empty())));
  }

  /**
   * @param answer {@code pass}, or {@code fail-} and the finding
   */
  @POST
  @Path("/{session}/checks/{check}")
  public Response check(
      @PathParam("session") UUID session,
      @PathParam("check") String check,
      @RestForm String commandId,
      @RestForm String answer,
      @RestForm String valueMm) {
    UUID id = CommandId.of(commandId);
    boolean fails = answer != null && answer.startsWith(FAIL);
    Optional<String> finding =
        fails ? Optional.of(answer.substring(FAIL.length())) : Optional.empty();
    return then(
        session,
        fails ? check : null,
        null,
        () ->
            desk.check(
                id,
                session,
                new SessionBody.Answered(
                    check,
                    fails ? "fail" : answer,
                    Optional.empty(),
                    finding,
                    Typed.millimetres(valueMm),
                    Optional.empty())));
  }

  @POST
  @Path("/{session}/checks/{check}/adjust")
  public Response adjust(
      @PathParam("session") UUID session,
      @PathParam("check") String check,
      @RestForm String commandId,
      @RestForm String remedy,
      @RestForm String item) {
    UUID id = CommandId.of(commandId);
    Optional<String> part = Optional.ofNullable(item).filter(i -> !i.isBlank());
    return then(
        session,
        check,
        null,
        () ->
            desk.adjust(
                id, session, new SessionBody.Adjusted(check, remedy, part, Optional.empty())));
  }

  @POST
  @Path("/{session}/checks/{check}/passed-over")
  public Response passOver(
      @PathParam("session") UUID session,
      @PathParam("check") String check,
      @RestForm String commandId,
      @RestForm String remedy,
      @RestForm String item,
      @RestForm String why) {
    UUID id = CommandId.of(commandId);
    Optional<String> part = Optional.ofNullable(item).filter(i -> !i.isBlank());
    return then(
        session,
        check,
        null,
        () ->
            desk.passOver(
                id,
                session,
                new SessionBody.PassedOver(check, remedy, part, why, Optional.empty())));
  }

  @POST
  @Path("/{session}/checks/{check}/correct")
  public Response correct(
      @PathParam("session") UUID session,
      @PathParam("check") String check,
      @RestForm String commandId,
      @RestForm String remedy,
      @RestForm String why) {
    UUID id = CommandId.of(commandId);
    Optional<String> named = Optional.ofNullable(remedy).filter(r -> !r.isBlank());
    return then(
        session,
        check,
        null,
        () ->
            desk.correct(
                id, session, new SessionBody.Corrected(check, named, why, Optional.empty())));
  }

  @POST
  @Path("/{session}/pause")
  public Response pause(@PathParam("session") UUID session, @RestForm String commandId) {
    UUID id = CommandId.of(commandId);
    return then(
        session, null, null, () -> desk.pause(id, session, new SessionBody.Now(Optional.empty())));
  }

  @POST
  @Path("/{session}/resume")
  public Response resume(@PathParam("session") UUID session, @RestForm String commandId) {
    UUID id = CommandId.of(commandId);
    return then(
        session, null, null, () -> desk.resume(id, session, new SessionBody.Now(Optional.empty())));
  }

  @POST
  @Path("/{session}/take-back")
  public Response takeBack(
      @PathParam("session") UUID session, @RestForm String commandId, @RestForm String why) {
    UUID id = CommandId.of(commandId);
    return then(
        session,
        null,
        null,
        () -> desk.takeBack(id, session, new SessionBody.Abandoned(why, Optional.empty())));
  }

  @POST
  @Path("/{session}/pass")
  public Response pass(
      @PathParam("session") UUID session,
      @RestForm String commandId,
      @RestForm String airCelsius,
      @RestForm String hair) {
    UUID id = CommandId.of(commandId);
    return then(
        session,
        null,
        null,
        () ->
            desk.pass(
                id,
                session,
                new SessionBody.Passed(
                    Typed.celsius(airCelsius),
                    Optional.ofNullable(hair),
                    List.of(),
                    Optional.empty())));
  }

  @POST
  @Path("/{session}/fail")
  public Response fail(@PathParam("session") UUID session, @RestForm String commandId) {
    UUID id = CommandId.of(commandId);
    return then(
        session,
        null,
        "fail",
        () -> desk.fail(id, session, new SessionBody.Failed(List.of(), Optional.empty())));
  }

  @POST
  @Path("/{session}/abandon")
  public Response abandon(
      @PathParam("session") UUID session, @RestForm String commandId, @RestForm String why) {
    UUID id = CommandId.of(commandId);
    return then(
        session,
        null,
        null,
        () -> desk.abandon(id, session, new SessionBody.Abandoned(why, Optional.empty())));
  }

  /** After a command the next screen, or the same one with what is wrong. */
  private Response then(UUID session, String check, String step, Supplier<Answer> command) {
    try {
      command.get();
      String where = "/fitting/sessions/" + session;
      return Answers.goTo(check == null ? where : where + "?check=" + check);
    } catch (CommandReused e) {
      String problem = "That was sent from an older page. This is how the session stands now.";
      return Response.status(409).entity(page(session, check, step, problem)).build();
    } catch (Problem problem) {
      if (problem.status() == 403 || problem.status() == 404) {
        throw problem;
      }
      return Response.status(problem.status())
          .entity(page(session, check, step, problem.getMessage()))
          .build();
    }
  }

  private String page(UUID id, String check, String step, String problem) {
    return transactions.required(
        c -> screens.template(desk.own(id), check, step, problem).render());
  }
}
