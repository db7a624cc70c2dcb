package org.tapeline.inventory.helmet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.quarkus.access.Caller;

/** One helmet with its life and its inspection. */
@Path("/helmets")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class HelmetPage {
  private final HelmetAccess access;
  private final HelmetDesk desk;
  private final Places places;
  private final Caller caller;

  HelmetPage(HelmetAccess access, HelmetDesk desk, Places places, Caller caller) {
    this.access = access;
    this.desk = desk;
    this.places = places;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "helmet")
  static class Templates {
    private Templates() {}

    static native TemplateInstance one(View helmet, List<TimeLine.Line> life, boolean mayInspect);
  }

  @GET
  @Path("/{tag}")
  public String one(@PathParam("tag") String tag) {
    View view = access.see(tag);
    List<TimeLine.Line> life = TimeLine.of(desk.life(view.tag()), places.zone(view.place()));
    boolean mayInspect = caller.worksAs("warehouse") && view.state().equals("quarantined");
    return Templates.one(view, life, mayInspect).render();
  }
}
