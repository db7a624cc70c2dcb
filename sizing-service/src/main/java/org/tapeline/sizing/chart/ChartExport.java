package org.tapeline.sizing.chart;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;

/** The charts in force as the file that the import takes. */
@Path("/api/charts.csv")
@RolesAllowed({"fitter", "warehouse", "equipment-manager"})
@RunOnVirtualThread
public class ChartExport {
  private final Charts charts;

  ChartExport(Charts charts) {
    this.charts = charts;
  }

  @GET
  @Transactional
  public Response csv() {
    return Response.ok(ChartCsv.write(charts.inForce(), charts.units()))
        .type("text/csv;charset=UTF-8")
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"charts.csv\"")
        .build();
  }
}
