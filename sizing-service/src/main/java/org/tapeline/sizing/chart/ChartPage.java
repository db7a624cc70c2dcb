package org.tapeline.sizing.chart;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.tapeline.sizing.units.Inches;

/** The charts in force, as a person reads them. */
@Path("/charts")
@RolesAllowed({"fitter", "warehouse", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ChartPage {
  private final Charts charts;

  ChartPage(Charts charts) {
    this.charts = charts;
  }

  @CheckedTemplate(basePath = "chart")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Shown> charts);
  }

  /** A chart for the page. */
  public record Shown(String model, int version, List<Line> lines) {
    static Shown of(SizeChart chart) {
      String model = ModelName.said(chart.model());
      return new Shown(model, chart.version(), chart.sizes().stream().map(Line::of).toList());
    }
  }

  /** A size for the page. */
  public record Line(String size, String inches, String millimetres) {
    static Line of(SizeRange range) {
      return new Line(
          range.said(),
          Inches.say(range.from()) + " to " + Inches.say(range.to()),
          Math.round(range.from().value()) + " to " + Math.round(range.to().value()) + " mm");
    }
  }

  @GET
  @Transactional
  public TemplateInstance list() {
    return Templates.list(charts.inForce().stream().map(Shown::of).toList());
  }
}
