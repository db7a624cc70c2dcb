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

/** Changes of hair for programs. */
@Path("/api/hair-changes")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class HairResource {
  private final HairDesk desk;

  HairResource(HairDesk desk) {
    this.desk = desk;
  }

  @POST
  public Response note(@HeaderParam(CommandId.HEADER) String commandId, HairDesk.Changed body) {
    UUID id = CommandId.of(commandId);
    if (body == null) {
      throw Problem.badRequest("body-missing", "Send {\"player\":\"LV-0001\",\"hair\":\"short\"}.");
    }
    return Answers.of(id, desk.note(id, body));
  }
}
