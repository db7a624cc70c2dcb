package org.tapeline.inventory.helmet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.HelmetViews.Filter;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.helmet.HelmetWork.Inspection;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Helmets as pages: the list, and one with its life and its inspection. */
@Path("/helmets")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class HelmetPage {
  private static final int MOST = 300;

  private final HelmetViews views;
  private final HelmetAccess access;
  private final HelmetDesk desk;
  private final HelmetWork work;
  private final Places places;
  private final Caller caller;

  HelmetPage(
      HelmetViews views,
      HelmetAccess access,
      HelmetDesk desk,
      HelmetWork work,
      Places places,
      Caller caller) {
    this.views = views;
    this.access = access;
    this.desk = desk;
    this.work = work;
    this.places = places;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "helmet")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<Places.Place> places, List<String> sizes, Filter filter, List<View> helmets, int most);

    static native TemplateInstance one(
        View helmet, List<TimeLine.Line> life, boolean mayInspect, UUID commandId, String wrong);
  }

  @GET
  public String list(
      @QueryParam("place") String place,
      @QueryParam("size") String size,
      @QueryParam("state") String state) {
    Filter filter = new Filter(place, "", size, state);
    List<View> helmets = views.list(filter, access.bounds(), MOST);
    return Templates.list(places.all(), views.sizes(), filter, helmets, MOST).render();
  }

  @GET
  @Path("/{tag}")
  public String one(@PathParam("tag") String tag) {
    return show(tag, "");
  }

  private String show(String tag, String wrong) {
    View view = access.see(tag);
    List<TimeLine.Line> life = TimeLine.of(desk.life(view.tag()), places.zone(view.place()));
    boolean mayInspect = caller.worksAs("warehouse") && view.state().equals("quarantined");
    return Templates.one(view, life, mayInspect, UuidV7.next(), wrong).render();
  }

  @POST
  @Path("/{tag}/inspection")
  @RolesAllowed({"equipment-manager", "warehouse"})
  public Response inspect(
      @PathParam("tag") String tag,
      @RestForm String commandId,
      @RestForm String outcome,
      @RestForm List<String> findings) {
    String known = access.see(tag).tag();
    try {
      work.inspect(
          known, new Inspection(outcome == null ? "" : outcome, findings), CommandId.of(commandId));
      return Response.status(303).header("Location", "/inventory/helmets/" + known).build();
    } catch (Problem problem) {
      return Response.status(problem.status()).entity(show(known, problem.getMessage())).build();
    }
  }
}
