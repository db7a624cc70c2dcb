package org.tapeline.inventory.stock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.stock.PartChecks.ToCheck;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Parts in helmets for which they are not listed. */
@Path("/stock/checks")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class ChecksPage {
  private final PartChecks checks;

  ChecksPage(PartChecks checks) {
    this.checks = checks;
  }

  @CheckedTemplate(basePath = "stock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance checks(List<Line> lines);
  }

  /** A thing to check, with the id that a click sends: the same however often the page is asked. */
  public record Line(ToCheck part, UUID commandId) {}

  @GET
  public String show() {
    List<Line> lines =
        checks.open().stream()
            .map(c -> new Line(c, DerivedId.from(c.session(), "part-checked-" + c.item())))
            .toList();
    return Templates.checks(lines).render();
  }

  @POST
  @Path("/{session}/{item}")
  public Response checked(
      @PathParam("session") UUID session,
      @PathParam("item") String item,
      @RestForm String commandId) {
    checks.checked(session, item, CommandId.of(commandId));
    return Answers.goTo("/inventory/stock/checks");
  }
}
