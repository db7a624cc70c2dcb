package org.tapeline.notify.optout;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.link.LinkPage;
import org.tapeline.journal.quarkus.link.LinkPages;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.link.NoticeLinks.TurnOff;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/**
 * Where a guardian turns off what is not about safety. Looking at it changes nothing, since mail
 * scanners look at links; the POST is what a button here, and the one click of a mail program (RFC
 * 8058), send: without log-in or cookie, answered without a redirect. In every language, since the
 * link says who but a page that anybody may open should not.
 */
@Path("/unsubscribe/{token}")
@PermitAll
@LinkPage
@RunOnVirtualThread
public class OptOutPage {
  private final NoticeLinks links;
  private final OptOuts optOuts;
  private final Words words;

  OptOutPage(NoticeLinks links, OptOuts optOuts, Words words) {
    this.links = links;
    this.optOuts = optOuts;
    this.words = words;
  }

  @CheckedTemplate(basePath = "optout")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(List<Phrases> languages, String token, String step);
  }

  @GET
  public Response ask(@PathParam("token") String token) {
    return links.openTurnOff(token).isPresent() ? html(token, "ask") : LinkPages.dead();
  }

  /** Both forms of body that RFC 8058 names; what stands in it makes no difference. */
  @POST
  @Consumes({MediaType.APPLICATION_FORM_URLENCODED, MediaType.MULTIPART_FORM_DATA})
  public Response turnOff(@PathParam("token") String token, byte[] body) {
    Optional<TurnOff> asked = links.openTurnOff(token);
    asked.ifPresent(optOuts::turnOff);
    return asked.isPresent() ? html(token, "done") : LinkPages.dead();
  }

  private Response html(String token, String step) {
    List<Phrases> languages =
        List.of(words.phrases(Language.ENGLISH), words.phrases(Language.SPANISH));
    return LinkPages.html(200, Templates.page(languages, token, step));
  }
}
