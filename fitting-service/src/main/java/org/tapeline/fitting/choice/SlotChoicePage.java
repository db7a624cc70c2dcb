package org.tapeline.fitting.choice;

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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.SlotRef;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.link.LinkPage;
import org.tapeline.journal.quarkus.link.LinkPages;
import org.tapeline.journal.token.SlotLinks.Slot;

/**
 * Where a guardian chooses another slot for one re-fit case, by a link from a notice's page and
 * without log-in. Plain forms: it works on any phone and without scripts. Whatever is wrong with a
 * link, the answer is the same plain page.
 */
@Path("/slot/{token}")
@PermitAll
@LinkPage
@RunOnVirtualThread
public class SlotChoicePage {
  private static final int OK = 200;
  private static final int CONFLICT = 409;

  private final ChoiceLinks links;
  private final Choices choices;

  SlotChoicePage(ChoiceLinks links, Choices choices) {
    this.links = links;
    this.choices = choices;
  }

  /** What the page answers to something that was done; {@code kind} is ok or warn. */
  record Said(String kind, String words) {}

  @CheckedTemplate(basePath = "choice")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(
        ChoiceView view, Optional<Said> said, String token, UUID commandId);

    static native TemplateInstance over(ChoiceWords words);
  }

  @GET
  public Response choose(@PathParam("token") String token, @QueryParam("done") String done) {
    return links
        .open(token)
        .map(link -> page(OK, link, token, done == null ? "" : "done"))
        .orElseGet(LinkPages::dead);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response take(
      @PathParam("token") String token,
      @FormParam("commandId") String commandId,
      @FormParam("had") String had,
      @FormParam("slot") String slot) {
    return links
        .open(token)
        .map(link -> take(link, token, idOrNew(commandId), SlotRef.parse(had), SlotRef.parse(slot)))
        .orElseGet(LinkPages::dead);
  }

  private Response take(
      Slot link, String token, UUID commandId, Optional<SlotRef> had, Optional<SlotRef> wanted) {
    if (wanted.isEmpty()) {
      return page(400, link, token, "not.chosen");
    }
    try {
      choices.take(link, commandId, had, wanted.get());
    } catch (Problem refused) {
      return page(CONFLICT, link, token, refused.code());
    }
    return Answers.goTo("/fitting/slot/" + token + "?done=1");
  }

  @GET
  @Path("/refit.ics")
  public Response calendar(@PathParam("token") String token) {
    return links
        .open(token)
        .flatMap(choices::calendar)
        .map(
            file ->
                Response.ok(file)
                    .type("text/calendar; charset=UTF-8; method=PUBLISH")
                    .header("Content-Disposition", "attachment; filename=\"refit.ics\"")
                    .build())
        .orElseGet(LinkPages::dead);
  }

  /**
   * @param said key of the words that answer what was done; empty for none
   */
  private Response page(int status, Slot link, String token, String said) {
    Optional<ChoiceView> view = choices.view(link);
    ChoiceWords words = choices.wordsOf(link);
    if (view.isEmpty()) {
      return LinkPages.html(status, Templates.over(words));
    }
    boolean ok = said.equals("done");
    Optional<Said> answer =
        said.isEmpty() || said.equals("over") || ok && view.get().current().isEmpty()
            ? Optional.empty()
            : Optional.of(new Said(ok ? "ok" : "warn", words.of(said)));
    return LinkPages.html(status, Templates.page(view.get(), answer, token, UuidV7.next()));
  }

  private static UUID idOrNew(String commandId) {
    try {
      return UUID.fromString(commandId == null ? "" : commandId);
    } catch (IllegalArgumentException e) {
      return UuidV7.next();
    }
  }
}
