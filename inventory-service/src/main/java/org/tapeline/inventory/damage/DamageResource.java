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
import java.util.UUID;
import org.tapeline.inventory.damage.DamageDesk.Said;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Damage reports as JSON. */
@Path("/api/helmets/{tag}/damage")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class DamageResource {
  private final DamageDesk desk;
  private final HelmetAccess access;

  DamageResource(DamageDesk desk, HelmetAccess access) {
    this.desk = desk;
    this.access = access;
  }

  @POST
  public Response report(
      @PathParam("tag") String tag, @HeaderParam(CommandId.HEADER) String commandId, Said said) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.report(access.see(tag).tag(), said, id));
  }
}
