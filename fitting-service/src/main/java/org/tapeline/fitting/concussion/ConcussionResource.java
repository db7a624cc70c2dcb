package org.tapeline.fitting.concussion;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
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
import org.tapeline.journal.quarkus.http.Problem;

/** Suspected concussions for programs. */
@Path("/api/concussions")
@RolesAllowed({"coach", "fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class ConcussionResource {
  private final ConcussionDesk desk;

  ConcussionResource(ConcussionDesk desk) {
    this.desk = desk;
  }

  @POST
  public Response suspect(
      @HeaderParam(CommandId.HEADER) String commandId, ConcussionDesk.Suspected body) {
    UUID id = CommandId.of(commandId);
    if (body == null) {
      throw Problem.badRequest("body-missing", "Send {\"player\":\"LV-0001\"}.");
    }
    return Answers.of(id, desk.suspect(id, body));
  }

  @POST
  @Path("/{player}/return")
  @RolesAllowed({"fitter", "equipment-manager"})
  public Response clear(
      @PathParam("player") String player,
      @HeaderParam(CommandId.HEADER) String commandId,
      ConcussionDesk.Cleared body) {
    UUID id = CommandId.of(commandId);
    if (body == null) {
      throw Problem.badRequest("body-missing", "Send {\"confirmed\":true}.");
    }
    return Answers.of(id, desk.clear(id, player, body));
  }
}
