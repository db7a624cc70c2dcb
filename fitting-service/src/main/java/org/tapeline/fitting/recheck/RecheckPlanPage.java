package org.tapeline.fitting.recheck;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The re-check plan in force, to be read. */
@Path("/recheck-plan")
@RolesAllowed({"coach", "fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class RecheckPlanPage {
  private static final int SEA_LEVEL = 0;

  private final RecheckPlans plans;

  RecheckPlanPage(RecheckPlans plans) {
    this.plans = plans;
  }

  @CheckedTemplate(basePath = "recheck")
  static class Templates {
    private Templates() {}

    static native TemplateInstance plan(RecheckPlan plan, List<Line> lines, List<Height> heights);
  }

  /** A rule in words. */
  public record Line(String title, String when, String due, String lapses, String source) {
    static Line of(RecheckPlan.Rule rule) {
      return new Line(
          rule.title(),
          rule.roomChangePercent()
              .map(p -> "when the air takes " + AirWords.number(p) + " % less or more room")
              .orElse(""),
          days(rule.dueAfterDays()),
          rule.lapsesAfterDays()
              .map(RecheckPlanPage::days)
              .orElse("does not lapse: the weather changes back"),
          rule.source());
    }
  }

  /** Air pressure at an altitude, and how much more room air from sea level takes there. */
  public record Height(int metres, String kilopascals, String moreRoom) {
    static Height of(int metres) {
      double pascals = Air.pressurePascals(metres);
      double more = 100 * (Air.byAltitude(SEA_LEVEL, metres) - 1);
      return new Height(
          metres,
          String.format(Locale.ROOT, "%.1f", pascals / 1000),
          String.format(Locale.ROOT, "%.1f", more));
    }
  }

  @GET
  public String show() {
    RecheckPlan plan = plans.inForce();
    List<Height> heights = Stream.of(0, 250, 500, 1000, 1500, 2000).map(Height::of).toList();
    return Templates.plan(plan, plan.rules().stream().map(Line::of).toList(), heights).render();
  }

  private static String days(int days) {
    return switch (days) {
      case 0 -> "at once";
      case 1 -> "after 1 day";
      default -> "after " + days + " days";
    };
  }
}
