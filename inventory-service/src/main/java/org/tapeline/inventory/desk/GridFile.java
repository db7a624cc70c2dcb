package org.tapeline.inventory.desk;

import static java.util.Objects.requireNonNullElse;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.inventory.desk.StockGrids.Counted;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** The grids as files: a line for each cell, which spreadsheets can turn as they like. */
@Path("/grid-files")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class GridFile {
  private final StockGrids grids;
  private final HelmetViews views;
  private final Clock clock;

  GridFile(StockGrids grids, HelmetViews views, Clock clock) {
    this.grids = grids;
    this.views = views;
    this.clock = clock;
  }

  /**
   * @param model one model; all when it is empty
   */
  @GET
  @Path("/helmets.csv")
  public Response helmets(@QueryParam("model") String model, @QueryParam("place") String place) {
    String at = requireNonNullElse(place, "");
    List<String> models = requireNonNullElse(model, "").isEmpty() ? views.models() : List.of(model);
    List<List<Object>> rows = new ArrayList<>();
    for (String each : models) {
      for (Counted c : grids.helmets(each, at, LocalDate.now(clock))) {
        rows.add(
            List.of(
                c.place(),
                each,
                c.kind(),
                c.cell().free(),
                c.cell().kept(),
                c.cell().out(),
                c.cell().aside(),
                c.cell().waiting()));
      }
    }
    List<String> header =
        List.of("place", "model", "size", "free", "kept", "issued", "out_of_use", "waiting");
    return CsvAnswer.of("helmets-by-place", header, rows);
  }

  @GET
  @Path("/parts.csv")
  public Response parts(@QueryParam("place") String place, @QueryParam("item") String item) {
    List<List<Object>> rows = new ArrayList<>();
    for (Counted c : grids.parts(requireNonNullElse(place, ""), requireNonNullElse(item, ""))) {
      rows.add(List.of(c.place(), c.kind(), c.cell().free(), c.cell().kept(), c.cell().waiting()));
    }
    return CsvAnswer.of(
        "parts-by-place", List.of("place", "item", "free", "kept", "waiting"), rows);
  }
}
