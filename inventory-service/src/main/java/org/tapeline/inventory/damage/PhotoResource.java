package org.tapeline.inventory.damage;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Photos of damage for programs: the body is the file. */
@Path("/api/helmets/{tag}/damage/{report}/photo")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@RunOnVirtualThread
public class PhotoResource {
  private final PhotoDesk desk;

  PhotoResource(PhotoDesk desk) {
    this.desk = desk;
  }

  @POST
  @Consumes({"image/jpeg", "image/png", "application/octet-stream"})
  public Response add(
      @PathParam("tag") String tag,
      @PathParam("report") UUID report,
      @HeaderParam(CommandId.HEADER) String commandId,
      byte[] file) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.add(tag, report, file == null ? new byte[0] : file, id));
  }

  @GET
  public Response see(@PathParam("report") UUID report) {
    return PhotoPage.image(desk.see(report));
  }

  @DELETE
  @RolesAllowed("equipment-manager")
  public Response delete(
      @PathParam("report") UUID report, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.delete(report, id));
  }
}
