package org.tapeline.notify.wish;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.optout.OptOuts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** The guardians: how they can be reached, and what they asked for; for the equipment manager. */
@Path("/contacts")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ContactsPage {
  private final ContactViews views;
  private final ContactHistory history;
  private final WishDesk desk;
  private final OptOuts optOuts;
  private final ZoneChoice zones;
  private final Words words;

  ContactsPage(
      ContactViews views,
      ContactHistory history,
      WishDesk desk,
      OptOuts optOuts,
      ZoneChoice zones,
      Words words) {
    this.views = views;
    this.history = history;
    this.desk = desk;
    this.optOuts = optOuts;
    this.zones = zones;
    this.words = words;
  }

  @CheckedTemplate(basePath = "wish")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(String q, List<ContactViews.Line> lines, int most);

    static native TemplateInstance one(
        ContactViews.Line line,
        WishForm form,
        Map<String, String> wrong,
        Phrases phrases,
        List<String> zones,
        List<ContactHistory.Turn> history,
        UUID commandId);
  }

  /** Nobody is listed before something is searched for. */
  @GET
  public TemplateInstance search(@QueryParam("q") String q) {
    String text = q == null ? "" : q.strip();
    return Templates.list(text, text.isEmpty() ? List.of() : views.search(text), ContactViews.MOST);
  }

  @GET
  @Path("/{guardian}")
  public TemplateInstance one(@PathParam("guardian") UUID guardian) {
    ContactViews.Line line = line(guardian);
    return page(line, WishForm.of(line.wish()), Map.of());
  }

  @POST
  @Path("/{guardian}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response set(
      @PathParam("guardian") UUID guardian,
      @FormParam("commandId") String commandId,
      @FormParam("first") String first,
      @FormParam("from") String from,
      @FormParam("to") String to,
      @FormParam("zone") String zone) {
    ContactViews.Line line = line(guardian);
    WishForm form = new WishForm(first, from, to, zone);
    if (!form.wrong().isEmpty()) {
      return Response.status(400).entity(page(line, form, form.wrong()).render()).build();
    }
    desk.set(guardian, form.wish(), "staff", CommandId.of(commandId));
    return Answers.goTo("/notify/contacts/" + guardian);
  }

  /** Turning off is the person's own; staff turn on again when they are asked to. */
  @POST
  @Path("/{guardian}/news")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response turnOn(@PathParam("guardian") UUID guardian) {
    optOuts.turnOn(line(guardian).guardian(), "staff");
    return Answers.goTo("/notify/contacts/" + guardian);
  }

  private TemplateInstance page(ContactViews.Line line, WishForm form, Map<String, String> wrong) {
    return Templates.one(
        line,
        form,
        wrong,
        words.phrases(Language.ENGLISH),
        zones.of(form.zone()),
        history.of(line.guardian()),
        UuidV7.next());
  }

  private ContactViews.Line line(UUID guardian) {
    return views
        .one(guardian)
        .orElseThrow(
            () -> Problem.notFound("There is no such guardian, or no more. Search again."));
  }
}
