package org.tapeline.inventory.helmet;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetViews.Filter;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.helmet.HelmetWork.Label;
import org.tapeline.inventory.helmet.HelmetWork.To;
import org.tapeline.inventory.helmet.HelmetWork.Why;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Helmets as JSON. */
@Path("/api/helmets")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class HelmetResource {
  private final HelmetViews views;
  private final HelmetAccess access;
  private final HelmetWork work;

  HelmetResource(HelmetViews views, HelmetAccess access, HelmetWork work) {
    this.views = views;
    this.access = access;
    this.work = work;
  }

  @GET
  @RolesAllowed({"fitter", "equipment-manager", "warehouse"})
  @Consumes(MediaType.WILDCARD)
  public List<View> list(
      @QueryParam("place") String place,
      @QueryParam("model") String model,
      @QueryParam("size") String size,
      @QueryParam("state") String state) {
    return views.list(new Filter(place, model, size, state), access.bounds(), 5000);
  }

  @GET
  @Path("/{tag}")
  @RolesAllowed({"fitter", "equipment-manager", "warehouse"})
  @Consumes(MediaType.WILDCARD)
  public View one(@PathParam("tag") String tag) {
    return access.see(tag);
  }

  @POST
  @Path("/{tag}/move")
  public Response move(
      @PathParam("tag") String tag, @HeaderParam(CommandId.HEADER) String commandId, To to) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, work.move(access.see(tag).tag(), to, id));
  }

  @POST
  @Path("/{tag}/return")
  public Response giveBack(
      @PathParam("tag") String tag, @HeaderParam(CommandId.HEADER) String commandId, To to) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, work.giveBack(access.see(tag).tag(), to, id));
  }

  @POST
  @Path("/{tag}/certification")
  public Response recertify(
      @PathParam("tag") String tag, @HeaderParam(CommandId.HEADER) String commandId, Label label) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, work.recertify(access.see(tag).tag(), label, id));
  }

  @POST
  @Path("/{tag}/retire")
  public Response retire(
      @PathParam("tag") String tag, @HeaderParam(CommandId.HEADER) String commandId, Why why) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, work.retire(access.see(tag).tag(), why, id));
  }
}
