package org.tapeline.notify.sheet;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.file.PagePdf;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.TradeWords;

/**
 * A team's slips on a page and on paper, for its coach, the fitters of its fields and the equipment
 * manager.
 */
@Path("/teams/{team}")
@RolesAllowed({"equipment-manager", "fitter", "coach"})
@RunOnVirtualThread
public class SheetPage {
  private static final String PDF = "application/pdf";

  private final Slips slips;
  private final Caller caller;
  private final Clock clock;

  SheetPage(Slips slips, Caller caller, Clock clock) {
    this.slips = slips;
    this.caller = caller;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "sheet")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(TeamSheet sheet);

    static native TemplateInstance paper(TeamSheet sheet);
  }

  @GET
  @Path("/sheet")
  @Produces(MediaType.TEXT_HTML)
  public TemplateInstance page(@PathParam("team") String team) {
    return Templates.page(sheet(team));
  }

  @GET
  @Path("/sheet.pdf")
  @Produces(PDF)
  public Response paper(@PathParam("team") String team) {
    TeamSheet sheet = sheet(team);
    String name = "helmet-slips-" + team.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]", "");
    return Response.ok(PagePdf.of(Templates.paper(sheet).render()), PDF)
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + name + ".pdf\"")
        .header(HttpHeaders.CACHE_CONTROL, "no-store")
        .build();
  }

  private TeamSheet sheet(String team) {
    mustBeOwn(team);
    Instant now = clock.instant();
    String printed =
        Moments.date(now, slips.zone(), Language.ENGLISH)
            + ", "
            + Moments.time(now, slips.zone(), Language.ENGLISH);
    return new TeamSheet(team, TradeWords.team(team), printed, slips.of(team));
  }

  private void mustBeOwn(String team) {
    List<String> fields = slips.fieldsOf(team);
    if (caller.isManager() || caller.mayFollow(team)) {
      return;
    }
    if (fields.stream().noneMatch(caller::mayWorkAt)) {
      throw Problem.otherField("No player of this team trains at a field of yours.");
    }
  }
}
