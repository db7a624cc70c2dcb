package org.tapeline.notify.wish;

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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.link.LinkPage;
import org.tapeline.journal.quarkus.link.LinkPages;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.link.NoticeLinks.TurnOff;
import org.tapeline.notify.optout.OptOuts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/**
 * Where a guardian says, without log-in, how and when to be written to. The link is of a purpose of
 * its own, and ends; whatever is wrong with it, the answer is the same plain page. Looking changes
 * nothing.
 */
@Path("/c/{token}")
@PermitAll
@LinkPage
@RunOnVirtualThread
public class GuardianWishPage {
  private final NoticeLinks links;
  private final ContactViews views;
  private final WishDesk desk;
  private final OptOuts optOuts;
  private final ZoneChoice zones;
  private final Words words;

  GuardianWishPage(
      NoticeLinks links,
      ContactViews views,
      WishDesk desk,
      OptOuts optOuts,
      ZoneChoice zones,
      Words words) {
    this.links = links;
    this.views = views;
    this.desk = desk;
    this.optOuts = optOuts;
    this.zones = zones;
    this.words = words;
  }

  /** What was filled in, and what of it is wrong. */
  record Filled(WishForm form, boolean news, Map<String, String> wrong, boolean saved) {}

  @CheckedTemplate(basePath = "wish")
  static class Templates {
    private Templates() {}

    static native TemplateInstance guardian(
        Phrases phrases, String token, UUID commandId, Filled filled, List<String> zones);
  }

  @GET
  public Response read(@PathParam("token") String token, @QueryParam("saved") String saved) {
    Optional<ContactViews.Line> known = known(token);
    return known
        .map(
            line ->
                page(
                    200,
                    line,
                    token,
                    new Filled(
                        WishForm.of(line.wish()), !line.optedOut(), Map.of(), saved != null)))
        .orElseGet(LinkPages::dead);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response save(
      @PathParam("token") String token,
      @FormParam("commandId") String commandId,
      @FormParam("first") String first,
      @FormParam("from") String from,
      @FormParam("to") String to,
      @FormParam("zone") String zone,
      @FormParam("news") String news) {
    Optional<ContactViews.Line> known = known(token);
    if (known.isEmpty()) {
      return LinkPages.dead();
    }
    WishForm form = new WishForm(first, from, to, zone);
    if (!form.wrong().isEmpty()) {
      return page(400, known.get(), token, new Filled(form, news != null, form.wrong(), false));
    }
    TurnOff asked = links.openContact(token).orElseThrow();
    desk.set(asked.recipient(), form.wish(), "guardian", idOrNew(commandId));
    if (news == null) {
      optOuts.turnOff(asked);
    } else {
      optOuts.turnOn(asked.recipient(), "guardian");
    }
    return Answers.goTo("/notify/c/" + token + "?saved=yes");
  }

  private Optional<ContactViews.Line> known(String token) {
    return links.openContact(token).flatMap(asked -> views.one(asked.recipient()));
  }

  private Response page(int status, ContactViews.Line line, String token, Filled filled) {
    Phrases phrases = words.phrases(Language.of(line.language()).orElse(Language.ENGLISH));
    return LinkPages.html(
        status,
        Templates.guardian(phrases, token, UuidV7.next(), filled, zones.of(filled.form().zone())));
  }

  static UUID idOrNew(String commandId) {
    try {
      return UUID.fromString(commandId == null ? "" : commandId);
    } catch (IllegalArgumentException e) {
      return UuidV7.next();
    }
  }
}
