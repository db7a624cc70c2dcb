package org.tapeline.fitting.evidence;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.PermitAll;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.Optional;

/**
 * Where the code on a printed sheet leads: whether the paper agrees with the record, and whether
 * the sign-off holds. Without log-in, and with nothing about the child. Whatever is wrong with a
 * code, the answer is the same plain page.
 */
@Path("/verify")
@PermitAll
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class VerifyPage {
  private final Evidences evidences;
  private final SheetLinks links;
  private final Clock clock;

  VerifyPage(Evidences evidences, SheetLinks links, Clock clock) {
    this.evidences = evidences;
    this.links = links;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "evidence")
  static class Templates {
    private Templates() {}

    static native TemplateInstance verify(VerifyView view);

    static native TemplateInstance unknown();
  }

  @GET
  @Path("/{token}")
  @Transactional
  public Response verify(@PathParam("token") String token) {
    return links.open(token).flatMap(this::found).orElseGet(VerifyPage::notFromHere);
  }

  private Optional<Response> found(SheetKey.Reference sheet) {
    return evidences
        .of(sheet.session())
        .map(e -> VerifyView.of(sheet, e, evidences.standing(e), clock.instant()))
        .map(view -> answer(200, Templates.verify(view)));
  }

  private static Response notFromHere() {
    return answer(404, Templates.unknown());
  }

  private static Response answer(int status, TemplateInstance page) {
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .header("Referrer-Policy", "no-referrer")
        .header("X-Robots-Tag", "noindex")
        .entity(page.render())
        .build();
  }
}
