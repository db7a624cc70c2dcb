package org.tapeline.sizing.roster;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Entering the readings of one head, on a phone at the field. */
@Path("/players/{player}/measure")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class MeasurePage {
  private final Caller caller;
  private final OwnPlayers own;
  private final Measuring measuring;

  MeasurePage(Caller caller, OwnPlayers own, Measuring measuring) {
    this.caller = caller;
    this.own = own;
    this.measuring = measuring;
  }

  @CheckedTemplate(basePath = "reading")
  static class Templates {
    private Templates() {}

    static native TemplateInstance measure(PlayerView player, MeasureForm form);
  }

  @GET
  @Transactional
  public TemplateInstance show(@PathParam("player") String reference) {
    return Templates.measure(own.one(reference), MeasureForm.empty());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response record(
      @PathParam("player") String reference,
      @RestForm String commandId,
      @RestForm String first,
      @RestForm String second,
      @RestForm String third,
      @RestForm String hair,
      @RestForm String confirmed) {
    PlayerView player = own.one(reference);
    UUID id = CommandId.of(commandId);
    MeasureForm.Typed typed = MeasureForm.typed(first, second, third, hair, confirmed);
    try {
      measuring.record(id, player.player(), typed.entry(), caller.id());
      // Not seeOther: it would put the root path before a path that has it already.
      return Response.status(Response.Status.SEE_OTHER)
          .header(HttpHeaders.LOCATION, "/sizing/players/" + player.player() + "?measured=yes")
          .build();
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(Templates.measure(player, MeasureForm.after(problem, id, typed)).render())
          .build();
    }
  }
}
