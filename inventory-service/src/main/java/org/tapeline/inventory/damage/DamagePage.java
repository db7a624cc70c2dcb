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
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.damage.DamageDesk.Said;
import org.tapeline.inventory.helmet.HelmetAccess;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Reporting damage on a phone: where, what, send. */
@Path("/helmets/{tag}/damage")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class DamagePage {
  private final DamageDesk desk;
  private final HelmetAccess access;

  DamagePage(DamageDesk desk, HelmetAccess access) {
    this.desk = desk;
    this.access = access;
  }

  @CheckedTemplate(basePath = "damage")
  static class Templates {
    private Templates() {}

    static native TemplateInstance form(
        View helmet, DamageRules rules, UUID commandId, Said said, String wrong);
  }

  @GET
  public String form(@PathParam("tag") String tag) {
    return show(tag, new Said("", ""), "");
  }

  @POST
  public Response report(
      @PathParam("tag") String tag,
      @RestForm String commandId,
      @RestForm String where,
      @RestForm String what) {
    String known = access.see(tag).tag();
    Said said = new Said(where == null ? "" : where, what == null ? "" : what);
    try {
      desk.report(known, said, CommandId.of(commandId));
      return Response.status(303).header("Location", "/inventory/helmets/" + known).build();
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(show(known, said, problem.getMessage()))
          .build();
    }
  }

  private String show(String tag, Said said, String wrong) {
    return Templates.form(access.see(tag), desk.rules(), UuidV7.next(), said, wrong).render();
  }
}
