package org.tapeline.inventory.stock;

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
import org.tapeline.inventory.forecast.SizeForecasts;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.stock.StockResource.Line;

/** Parts by place and item, as a page. */
@Path("/stock")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class StockPage {
  private final StockResource stock;
  private final Places places;
  private final SizeForecasts forecasts;

  StockPage(StockResource stock, Places places, SizeForecasts forecasts) {
    this.stock = stock;
    this.places = places;
    this.forecasts = forecasts;
  }

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<Places.Place> places, String place, List<Line> lines, List<SizeForecasts.Line> sizes);
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public String page(@QueryParam("place") String place) {
    String wanted = place == null ? "" : place;
    return Templates.list(places.all(), wanted, stock.json(wanted), forecasts.besideStock())
        .render();
  }
}
