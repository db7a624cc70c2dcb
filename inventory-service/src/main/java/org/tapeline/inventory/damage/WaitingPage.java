package org.tapeline.inventory.damage;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.tapeline.inventory.damage.Inspections.Waiting;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;

/** Helmets in quarantine that wait to be inspected, the longest first. */
@Path("/inspections")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class WaitingPage {
  private final Inspections inspections;
  private final Places places;

  WaitingPage(Inspections inspections, Places places) {
    this.inspections = inspections;
    this.places = places;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance waiting(List<Place> places, String place, List<Waiting> helmets);
  }

  @GET
  public String show(@QueryParam("place") String place) {
    String wanted = place == null ? "" : place;
    return Templates.waiting(places.all(), wanted, inspections.waiting(wanted)).render();
  }
}
