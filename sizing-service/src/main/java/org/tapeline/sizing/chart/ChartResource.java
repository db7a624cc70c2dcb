package org.tapeline.sizing.chart;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** The charts in force as JSON. */
@Path("/api/charts")
@RolesAllowed({"fitter", "warehouse", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class ChartResource {
  private final Charts charts;

  ChartResource(Charts charts) {
    this.charts = charts;
  }

  @GET
  @Transactional
  public List<ChartPublished> inForce() {
    return charts.inForce().stream().map(ChartPublished::of).toList();
  }
}
