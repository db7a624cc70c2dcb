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
import java.util.Locale;
import java.util.Map;
import org.tapeline.sizing.offset.OffsetPosterior;
import org.tapeline.sizing.offset.Offsets;
import org.tapeline.sizing.units.Inches;

/** The charts in force, as a person reads them. */
@Path("/charts")
@RolesAllowed({"fitter", "warehouse", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ChartPage {
  private final Charts charts;
  private final Offsets offsets;

  ChartPage(Charts charts, Offsets offsets) {
    this.charts = charts;
    this.offsets = offsets;
  }

  @CheckedTemplate(basePath = "chart")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Shown> charts);
  }

  /** A chart for the page. */
  public record Shown(String model, int version, List<Line> lines, String learned) {
    static Shown of(SizeChart chart, OffsetPosterior offset) {
      return new Shown(
          ModelName.said(chart.model()),
          chart.version(),
          chart.sizes().stream().map(Line::of).toList(),
          learned(offset));
    }

    private static String learned(OffsetPosterior offset) {
      if (offset == null) {
        return "No fit has passed in this model yet.";
      }
      String found =
          String.format(
              Locale.ROOT,
              "%d passed fits: heads count %+.1f mm (95 %%: %+.1f to %+.1f). ",
              offset.fits(),
              offset.mm(),
              offset.lowMm(),
              offset.highMm());
      return found
          + (offset.appliedMm() == 0
              ? "That is not clear enough to be applied."
              : "Advice counts them " + offset.appliedMm() + " mm larger.");
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
    Map<String, OffsetPosterior> learned = offsets.learned();
    return Templates.list(
        charts.inForce().stream()
            .map(chart -> Shown.of(chart, learned.get(chart.model())))
            .toList());
  }
}
