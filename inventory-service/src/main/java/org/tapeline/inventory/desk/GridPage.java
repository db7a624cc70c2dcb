package org.tapeline.inventory.desk;

import static java.util.Objects.requireNonNullElse;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.tapeline.inventory.desk.StockGrids.Counted;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.inventory.place.Places;

/** Stock by place: helmets of a model by size, and parts. */
@Path("/grid")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class GridPage {
  private final StockGrids grids;
  private final HelmetViews views;
  private final Places places;
  private final Clock clock;

  GridPage(StockGrids grids, HelmetViews views, Places places, Clock clock) {
    this.grids = grids;
    this.views = views;
    this.places = places;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "desk")
  static class Templates {
    private Templates() {}

    static native TemplateInstance helmets(
        List<String> models, String model, List<Places.Place> places, String place, Grid grid);

    static native TemplateInstance parts(
        List<Places.Place> places, String place, String item, Grid desk, Grid phone);
  }

  @GET
  @Path("/helmets")
  public String helmets(@QueryParam("model") String model, @QueryParam("place") String place) {
    List<String> models = views.models();
    String shown = models.contains(model) ? model : models.isEmpty() ? "" : models.getFirst();
    String at = requireNonNullElse(place, "");
    Grid grid = grids.byPlaceAndSize(grids.helmets(shown, at, LocalDate.now(clock)));
    return Templates.helmets(models, shown, places.all(), at, grid).render();
  }

  @GET
  @Path("/parts")
  public String parts(@QueryParam("place") String place, @QueryParam("item") String item) {
    String at = requireNonNullElse(place, "");
    String what = requireNonNullElse(item, "");
    List<Counted> counted = grids.parts(at, what);
    return Templates.parts(
            places.all(), at, what, grids.byPartAndPlace(counted), grids.byPlaceAndPart(counted))
        .render();
  }
}
