package org.tapeline.inventory.damage;

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
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Inspections as JSON. */
@Path("/api/helmets/{tag}/inspection")
@RolesAllowed({"equipment-manager", "warehouse"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class InspectionResource {
  private final InspectionDesk desk;
  private final HelmetAccess access;

  InspectionResource(InspectionDesk desk, HelmetAccess access) {
    this.desk = desk;
    this.access = access;
  }

  @POST
  public Response inspect(
      @PathParam("tag") String tag,
      @HeaderParam(CommandId.HEADER) String commandId,
      Inspection found) {
    UUID id = CommandId.of(commandId);
    Inspection said = found == null ? new Inspection("", List.of(), List.of()) : found;
    return Answers.of(id, desk.inspect(access.see(tag).tag(), said, id));
  }
}
