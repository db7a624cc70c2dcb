package org.tapeline.fitting.fieldapp;

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

/** What a phone could not get recorded. */
@Path("/api/set-aside")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class SetAsideResource {
  private final SetAsideDesk desk;

  SetAsideResource(SetAsideDesk desk) {
    this.desk = desk;
  }

  @POST
  public Response keep(@HeaderParam(CommandId.HEADER) String commandId, SetAside body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.keep(id, body));
  }
}
