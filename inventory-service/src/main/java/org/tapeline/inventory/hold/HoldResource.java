package org.tapeline.inventory.hold;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Holds as JSON. */
@Path("/api/holds")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed("equipment-manager")
@RunOnVirtualThread
public class HoldResource {
  private final HoldDesk desk;
  private final HoldStore store;
  private final HoldCounts counts;
  private final HoldAccess access;
  private final Caller caller;

  HoldResource(
      HoldDesk desk, HoldStore store, HoldCounts counts, HoldAccess access, Caller caller) {
    this.desk = desk;
    this.store = store;
    this.counts = counts;
    this.access = access;
    this.caller = caller;
  }

  /** The helmet that lies aside. */
  public record Tag(String tag) {}

  @GET
  @RolesAllowed({"fitter", "equipment-manager", "warehouse"})
  @Consumes(MediaType.WILDCARD)
  public List<Hold> list() {
    return store.all();
  }

  @GET
  @Path("/{hold}")
  @RolesAllowed({"fitter", "equipment-manager", "warehouse"})
  @Consumes(MediaType.WILDCARD)
  public Hold one(@PathParam("hold") UUID hold) {
    return desk.known(hold);
  }

  @GET
  @Path("/{hold}/helmets")
  @RolesAllowed({"fitter", "equipment-manager", "warehouse"})
  @Consumes(MediaType.WILDCARD)
  public List<HoldList.Line> helmets(@PathParam("hold") UUID hold) {
    return access.lines(desk.known(hold).hold());
  }

  @POST
  @Path("/preview")
  public HoldPreview preview(HoldAsk ask) {
    return counts.of(given(ask).criteria());
  }

  @POST
  public Response place(@HeaderParam(CommandId.HEADER) String commandId, HoldAsk ask) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.place(given(ask), caller.id(), id));
  }

  @POST
  @Path("/{hold}/lift")
  public Response lift(
      @PathParam("hold") UUID hold,
      @HeaderParam(CommandId.HEADER) String commandId,
      HoldLift lift) {
    UUID id = CommandId.of(commandId);
    HoldLift asked = lift == null ? HoldLift.BLANK : lift;
    return Answers.of(id, desk.lift(desk.known(hold).hold(), asked, caller.id(), id));
  }

  @POST
  @Path("/{hold}/put-aside")
  @RolesAllowed({"fitter", "equipment-manager", "warehouse"})
  public Response putAside(
      @PathParam("hold") UUID hold, @HeaderParam(CommandId.HEADER) String commandId, Tag body) {
    UUID id = CommandId.of(commandId);
    if (body == null || body.tag() == null) {
      throw Problem.badRequest(
          "tag", "Give the tag of the helmet.", new Problem.FieldError("tag", "Needed."));
    }
    HoldList.Line line = access.mine(desk.known(hold).hold(), body.tag());
    return Answers.of(id, desk.putAside(hold, line.tag(), line.place(), caller.id(), id));
  }

  private static HoldAsk given(HoldAsk ask) {
    return ask == null ? HoldAsk.BLANK : ask;
  }
}
