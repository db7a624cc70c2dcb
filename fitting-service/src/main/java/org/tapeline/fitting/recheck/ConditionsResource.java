package org.tapeline.fitting.recheck;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Conditions of a field, for a weather station's adapter. */
@Path("/api/conditions")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class ConditionsResource {
  private final ConditionsDesk desk;

  ConditionsResource(ConditionsDesk desk) {
    this.desk = desk;
  }

  @POST
  public Response record(
      @HeaderParam(CommandId.HEADER) String commandId, ConditionsDesk.Told told) {
    UUID id = CommandId.of(commandId);
    if (told == null) {
      throw Problem.badRequest(
          "body-missing", "Send {\"field\":\"NORTH\",\"air\":\"4\",\"unit\":\"C\"}.");
    }
    return Answers.of(id, desk.record(id, told));
  }
}
