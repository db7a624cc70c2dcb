package org.tapeline.inventory.allocation;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
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
import org.tapeline.inventory.allocation.PlanViews.Entry;
import org.tapeline.inventory.allocation.PlanViews.View;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Plans as JSON. */
@Path("/api/plans")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class PlanResource {
  private static final int MOST = 100;

  private final Plans plans;
  private final PlanViews views;
  private final Places places;
  private final Caller caller;

  PlanResource(Plans plans, PlanViews views, Places places, Caller caller) {
    this.plans = plans;
    this.views = views;
    this.places = places;
    this.caller = caller;
  }

  @POST
  public Response make(@HeaderParam(CommandId.HEADER) String key, PlanAsk ask) {
    UUID id = CommandId.of(key);
    if (ask == null) {
      throw Problem.badRequest(
          "plan", "Say for whom the plan is: hold, cases, season or even-out.");
    }
    List<String> known = places.all().stream().map(Places.Place::code).toList();
    return Answers.of(id, plans.draft(ask.wish(known), caller.id(), id));
  }

  @GET
  public List<Entry> newest() {
    return views.newest(MOST);
  }

  @GET
  @Path("/{plan}")
  public View one(@PathParam("plan") UUID plan) {
    return views.one(plan);
  }

  @POST
  @Path("/{plan}/commit")
  public Response commit(@HeaderParam(CommandId.HEADER) String key, @PathParam("plan") UUID plan) {
    UUID id = CommandId.of(key);
    return Answers.of(id, plans.commit(plan, caller.id(), id));
  }

  @POST
  @Path("/{plan}/release")
  public Response release(@HeaderParam(CommandId.HEADER) String key, @PathParam("plan") UUID plan) {
    UUID id = CommandId.of(key);
    return Answers.of(id, plans.release(plan, id));
  }
}
