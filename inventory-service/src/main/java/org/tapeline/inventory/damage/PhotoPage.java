package org.tapeline.inventory.damage;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** A photo of damage for whoever may see the helmet, and its deletion. */
@Path("/helmets/{tag}/damage/{report}/photo")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@RunOnVirtualThread
public class PhotoPage {
  private final PhotoDesk desk;
  private final HelmetAccess access;

  PhotoPage(PhotoDesk desk, HelmetAccess access) {
    this.desk = desk;
    this.access = access;
  }

  @GET
  public Response see(@PathParam("report") UUID report) {
    return image(desk.see(report));
  }

  /** Nothing in it can run, whatever a browser takes it for. */
  static Response image(byte[] jpeg) {
    return Response.ok(jpeg, "image/jpeg")
        .header("X-Content-Type-Options", "nosniff")
        .header("Content-Security-Policy", "default-src 'none'; sandbox")
        .header("Content-Disposition", "inline; filename=\"damage.jpg\"")
        .header("Cross-Origin-Resource-Policy", "same-origin")
        .build();
  }

  @POST
  @Path("/delete")
  @RolesAllowed("equipment-manager")
  public Response delete(
      @PathParam("tag") String tag, @PathParam("report") UUID report, @RestForm String commandId) {
    String known = access.see(tag).tag();
    desk.delete(report, CommandId.of(commandId));
    return Answers.goTo("/inventory/helmets/" + known + "/damage/" + report);
  }
}
