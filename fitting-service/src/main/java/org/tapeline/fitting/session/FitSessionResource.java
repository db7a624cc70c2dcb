package org.tapeline.fitting.session;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Fit sessions for programs. */
@Path("/api/sessions")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class FitSessionResource {
  private final SessionDesk desk;

  FitSessionResource(SessionDesk desk) {
    this.desk = desk;
  }

  @POST
  public Response open(@HeaderParam(CommandId.HEADER) String commandId, SessionBody.Open body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.open(id, body));
  }

  @GET
  @Path("/{session}")
  public SessionView show(@PathParam("session") UUID session) {
    return desk.view(desk.own(session));
  }

  @POST
  @Path("/{session}/helmet")
  public Response helmet(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Helmet body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.tryHelmet(id, session, body));
  }

  @POST
  @Path("/{session}/checks")
  public Response check(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Answered body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.check(id, session, body));
  }

  @POST
  @Path("/{session}/adjustments")
  public Response adjust(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Adjusted body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.adjust(id, session, body));
  }

  @POST
  @Path("/{session}/pass")
  public Response pass(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Passed body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.pass(id, session, body));
  }

  @POST
  @Path("/{session}/fail")
  public Response fail(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Failed body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.fail(id, session, body));
  }

  @POST
  @Path("/{session}/abandon")
  public Response abandon(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Abandoned body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.abandon(id, session, body));
  }

  @POST
  @Path("/{session}/passed-over")
  public Response passOver(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.PassedOver body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.passOver(id, session, body));
  }

  @POST
  @Path("/{session}/corrections")
  public Response correct(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Corrected body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.correct(id, session, body));
  }

  @POST
  @Path("/{session}/pause")
  public Response pause(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Now body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.pause(id, session, body));
  }

  @POST
  @Path("/{session}/resume")
  public Response resume(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Now body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.resume(id, session, body));
  }

  @POST
  @Path("/{session}/take-back")
  public Response takeBack(
      @PathParam("session") UUID session,
      @HeaderParam(CommandId.HEADER) String commandId,
      SessionBody.Abandoned body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.takeBack(id, session, body));
  }
}
