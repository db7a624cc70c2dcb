package org.tapeline.notify.trace;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.notice.NoticeViews;
import org.tapeline.notify.notice.Recipients;
import org.tapeline.notify.words.Language;

/** The equipment manager's list of notices, and one notice with all that is known of it. */
@Path("/notices")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class NoticePage {
  private static final int MOST = 200;

  private final NoticeLines lines;
  private final NoticeFigures figures;
  private final Traces traces;
  private final NoticeViews views;
  private final Recipients recipients;

  NoticePage(
      NoticeLines lines,
      NoticeFigures figures,
      Traces traces,
      NoticeViews views,
      Recipients recipients) {
    this.lines = lines;
    this.figures = figures;
    this.traces = traces;
    this.views = views;
    this.recipients = recipients;
  }

  @CheckedTemplate(basePath = "notice")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<NoticeLine> notices,
        FilterForm form,
        List<NoticeFigures.Day> days,
        Optional<NoticeFigures.Delays> delays,
        int most,
        Wording say);

    static native TemplateInstance one(
        Trace trace, List<Moment> moments, NoticeViews.Whole whole, String other, Wording say);
  }

  @GET
  public Response list(@Context UriInfo asked) {
    FilterForm form = FilterForm.of(asked.getQueryParameters());
    ZoneId zone = lines.zone();
    NoticeFilter filter = form.filter(zone);
    List<NoticeLine> notices = lines.newest(filter, MOST);
    TemplateInstance page =
        Templates.list(
            notices,
            form,
            figures.days(filter, zone),
            figures.delays(filter),
            MOST,
            wording(notices, zone));
    return Response.status(form.errors().isEmpty() ? 200 : 400).entity(page).build();
  }

  @GET
  @Path("/{notice}")
  public TemplateInstance one(@PathParam("notice") UUID notice) {
    Trace trace =
        traces
            .of(notice)
            .orElseThrow(() -> Problem.notFound("There is no such notice. Look in the list."));
    return Templates.one(
        trace,
        Timeline.of(trace),
        views.one(notice).orElseThrow(),
        otherThan(trace.notice().language()),
        wording(List.of(trace.notice()), lines.zone()));
  }

  private static String otherThan(String language) {
    return Arrays.stream(Language.values())
        .map(Language::code)
        .filter(code -> !code.equals(language))
        .findFirst()
        .orElse(language);
  }

  private Wording wording(List<NoticeLine> notices, ZoneId zone) {
    return new Wording(
        recipients.names(notices.stream().map(NoticeLine::recipient).toList()), zone);
  }
}
