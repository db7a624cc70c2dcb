package org.tapeline.sizing.measurer;

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
import org.tapeline.sizing.measurer.Measurers.Measurer;

/** Whose tape or hand needs a look. */
@Path("/measurers")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class MeasurersPage {
  private final Measurers measurers;

  MeasurersPage(Measurers measurers) {
    this.measurers = measurers;
  }

  @CheckedTemplate(basePath = "measurer")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Line> measurers);
  }

  /** A measurer in words. */
  public record Line(Measurer m) {
    public String error() {
      return m.error().pairs() == 0 ? "–" : said("%.1f mm", m.error().mm());
    }

    public String bias() {
      return m.bias().heads() == 0
          ? "–"
          : said("%+.1f mm ± %.1f", m.bias().mm(), m.bias().plusMinusMm());
    }

    public String toDo() {
      if (m.bias().clear()) {
        return "Hold the tape against a steel rule: it reads too "
            + (m.bias().mm() > 0 ? "large." : "small.");
      }
      return m.error().large()
          ? "Practise with somebody: two readings of one head lie too far apart."
          : "In order";
    }

    private static String said(String form, Object... values) {
      return String.format(Locale.ROOT, form, values);
    }
  }

  @GET
  @Transactional
  public TemplateInstance list() {
    return Templates.list(measurers.all().stream().map(Line::new).toList());
  }
}
