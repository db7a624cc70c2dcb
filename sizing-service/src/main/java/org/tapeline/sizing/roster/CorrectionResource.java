package org.tapeline.sizing.roster;

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
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Corrections of recorded heads as JSON. */
@Path("/api/players/{player}/corrections")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class CorrectionResource {
  private final Caller caller;
  private final OwnPlayers own;
  private final Correcting correcting;

  CorrectionResource(Caller caller, OwnPlayers own, Correcting correcting) {
    this.caller = caller;
    this.own = own;
    this.correcting = correcting;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response correct(
      @PathParam("player") String reference,
      @HeaderParam(CommandId.HEADER) String commandId,
      Correcting.Entry entry) {
    UUID id = CommandId.of(commandId);
    if (entry == null) {
      throw Problem.badRequest(
          "body-missing",
          "Send {\"version\": 2, \"readings\": [\"22 7/8 in\", \"581 mm\"], \"why\":"
              + " \"misread\"}.");
    }
    UUID player = own.one(reference).player();
    return Answers.of(id, correcting.correct(id, player, entry, caller.id()));
  }
}
