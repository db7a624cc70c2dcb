package org.tapeline.inventory.outlook;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.inventory.chart.Picture;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** What has to be bought in the coming years, as a page and as a file. */
@Path("/outlook")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class OutlookPage {
  private static final List<String> HEADER =
      List.of(
          "season",
          "size",
          "too_old",
          "rejected_low",
          "rejected_high",
          "buy_low",
          "buy_middle",
          "buy_high",
          "cost_middle",
          "currency");

  private final OutlookDesk desk;

  OutlookPage(OutlookDesk desk) {
    this.desk = desk;
  }

  @CheckedTemplate(basePath = "outlook")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(OutlookView view, List<Picture> charts);
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public String show() {
    OutlookView view = new OutlookView(desk.picture());
    return Templates.page(view, OutlookCharts.of(view)).render();
  }

  @GET
  @Path("/outlook.csv")
  @Produces("text/csv")
  public Response csv() {
    OutlookView view = new OutlookView(desk.picture());
    List<List<?>> rows = new ArrayList<>();
    for (Outlook.Year y : view.rows()) {
      rows.add(
          List.of(
              y.season(),
              y.size().isEmpty() ? "all" : y.size(),
              y.tooOld().middle(),
              y.rejected().low(),
              y.rejected().high(),
              y.buy().low(),
              y.buy().middle(),
              y.buy().high(),
              BigDecimal.valueOf(view.cents(y.buy().middle()), 2),
              view.picture().currency()));
    }
    return CsvAnswer.of("outlook", HEADER, rows);
  }
}
