package org.tapeline.inventory.damage;

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
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Inspecting a helmet that is in quarantine. */
@Path("/helmets/{tag}/inspection")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class InspectionPage {
  private static final String SAY = "Say what was found; \"Nothing found\" when nothing was.";

  private final InspectionDesk desk;
  private final Inspections inspections;
  private final HelmetAccess access;

  InspectionPage(InspectionDesk desk, Inspections inspections, HelmetAccess access) {
    this.desk = desk;
    this.inspections = inspections;
    this.access = access;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance inspect(View helmet, InspectionForm form, String wrong);
  }

  @GET
  public String show(@PathParam("tag") String tag) {
    View helmet = access.see(tag);
    return Templates.inspect(helmet, inspections.blank(helmet.tag()), "").render();
  }

  @POST
  public Response inspect(
      @PathParam("tag") String tag,
      @RestForm String commandId,
      @RestForm String outcome,
      @RestForm List<String> findings,
      @RestForm List<String> parts) {
    String known = access.see(tag).tag();
    Inspection said = new Inspection(outcome, findings, parts);
    try {
      if (said.findings().isEmpty()) {
        throw Problem.badRequest("findings", SAY, new FieldError("findings", SAY));
      }
      desk.inspect(known, said, CommandId.of(commandId));
      return Answers.goTo("/inventory/helmets/" + known);
    } catch (Problem problem) {
      InspectionForm form = inspections.form(known, said, problem.errors());
      return Response.status(problem.status())
          .entity(Templates.inspect(access.see(known), form, problem.getMessage()).render())
          .build();
    }
  }
}
