package org.tapeline.notify.page;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.link.LinkPage;
import org.tapeline.journal.quarkus.link.LinkPages;
import org.tapeline.notify.help.HelpDesk;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.words.Phrases;

/**
 * The page behind a notice's link, without log-in: read it, add the date to a calendar, confirm.
 * Whatever is wrong with a link, the answer is the same plain page. Nothing is stored or passed on:
 * not in caches, not in the address that other sites see, not in search engines.
 */
@Path("/n/{token}")
@PermitAll
@LinkPage
@RunOnVirtualThread
public class ParentPage {
  private final NoticeLinks links;
  private final ParentView view;
  private final HelpDesk desk;

  ParentPage(NoticeLinks links, ParentView view, HelpDesk desk) {
    this.links = links;
    this.view = view;
    this.desk = desk;
  }

  @CheckedTemplate(basePath = "page")
  static class Templates {
    private Templates() {}

    static native TemplateInstance parent(
        ParentView.Shown shown, Phrases phrases, String token, UUID commandId);
  }

  @GET
  public Response read(@PathParam("token") String token) {
    return links.open(token).flatMap(view::of).map(s -> page(s, token)).orElseGet(LinkPages::dead);
  }

  @GET
  @Path("/refit.ics")
  public Response calendar(@PathParam("token") String token) {
    return links
        .open(token)
        .flatMap(view::calendarOf)
        .map(
            file ->
                Response.ok(file)
                    .type("text/calendar; charset=UTF-8; method=PUBLISH")
                    .header("Content-Disposition", "attachment; filename=\"refit.ics\"")
                    .build())
        .orElseGet(LinkPages::dead);
  }

  /** Confirmed by pressing the button, never by the mere look of a mail scanner at the link. */
  @POST
  @Path("/read")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response confirm(
      @PathParam("token") String token, @FormParam("commandId") String commandId) {
    Optional<ParentView.Shown> shown = links.open(token).flatMap(view::of);
    if (shown.isEmpty()) {
      return LinkPages.dead();
    }
    view.acknowledge(shown.get().notice(), idOrNew(commandId));
    return Response.fromResponse(Answers.goTo("/notify/n/" + token + ""))
        .header("Correlation-Id", shown.get().correlationId())
        .build();
  }

  /** Asks the staff for a call. */
  @POST
  @Path("/help")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response askForCall(
      @PathParam("token") String token, @FormParam("commandId") String commandId) {
    Optional<ParentView.Shown> shown = links.open(token).flatMap(view::of);
    if (shown.isEmpty()) {
      return LinkPages.dead();
    }
    if (shown.get().help().canAsk()) {
      desk.ask(shown.get().notice(), idOrNew(commandId));
    }
    return Answers.goTo("/notify/n/" + token + "#help");
  }

  private Response page(ParentView.Shown shown, String token) {
    Phrases phrases = view.phrasesOf(shown.letter());
    return LinkPages.html(200, Templates.parent(shown, phrases, token, UuidV7.next()));
  }

  private static UUID idOrNew(String commandId) {
    try {
      return UUID.fromString(commandId == null ? "" : commandId);
    } catch (IllegalArgumentException e) {
      return UuidV7.next();
    }
  }
}
