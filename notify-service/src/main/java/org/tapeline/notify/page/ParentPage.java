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
import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/**
 * The page behind a notice's link, without log-in: read it, add the date to a calendar, confirm.
 * Whatever is wrong with a link, the answer is the same plain page. Nothing is stored or passed on:
 * not in caches, not in the address that other sites see, not in search engines.
 */
@Path("/n/{token}")
@PermitAll
@RunOnVirtualThread
public class ParentPage {
  private final NoticeLinks links;
  private final ParentView view;
  private final Words words;

  ParentPage(NoticeLinks links, ParentView view, Words words) {
    this.links = links;
    this.view = view;
    this.words = words;
  }

  @CheckedTemplate(basePath = "page")
  static class Templates {
    private Templates() {}

    static native TemplateInstance parent(
        ParentView.Shown shown, Phrases phrases, String token, UUID commandId);

    static native TemplateInstance dead(Phrases english, Phrases spanish);
  }

  @GET
  public Response read(@PathParam("token") String token) {
    return links.open(token).flatMap(view::of).map(s -> page(s, token)).orElseGet(this::dead);
  }

  @GET
  @Path("/refit.ics")
  public Response calendar(@PathParam("token") String token) {
    return links
        .open(token)
        .flatMap(view::calendarOf)
        .map(
            file ->
                guarded(Response.ok(file))
                    .type("text/calendar; charset=UTF-8; method=PUBLISH")
                    .header("Content-Disposition", "attachment; filename=\"refit.ics\"")
                    .build())
        .orElseGet(this::dead);
  }

  /** Confirmed by pressing the button, never by the mere look of a mail scanner at the link. */
  @POST
  @Path("/read")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response confirm(
      @PathParam("token") String token, @FormParam("commandId") String commandId) {
    Optional<ParentView.Shown> shown = links.open(token).flatMap(view::of);
    if (shown.isEmpty()) {
      return dead();
    }
    view.acknowledge(shown.get().notice(), idOrNew(commandId));
    return guarded(Response.seeOther(URI.create("/n/" + token)))
        .header("Correlation-Id", shown.get().correlationId())
        .build();
  }

  private Response page(ParentView.Shown shown, String token) {
    Phrases phrases =
        words.phrases(Language.of(shown.letter().language()).orElse(Language.ENGLISH));
    return html(200, Templates.parent(shown, phrases, token, UuidV7.next()));
  }

  private Response dead() {
    return html(
        404, Templates.dead(words.phrases(Language.ENGLISH), words.phrases(Language.SPANISH)));
  }

  private static Response html(int status, TemplateInstance page) {
    return guarded(Response.status(status).entity(page.render()))
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .build();
  }

  private static Response.ResponseBuilder guarded(Response.ResponseBuilder response) {
    return response
        .header("Cache-Control", "no-store")
        .header("Referrer-Policy", "no-referrer")
        .header("X-Robots-Tag", "noindex, nofollow")
        .header("X-Content-Type-Options", "nosniff");
  }

  private static UUID idOrNew(String commandId) {
    try {
      return UUID.fromString(commandId == null ? "" : commandId);
    } catch (IllegalArgumentException e) {
      return UuidV7.next();
    }
  }
}
