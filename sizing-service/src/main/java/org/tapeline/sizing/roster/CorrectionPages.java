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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** The last heads, and the form that corrects one of them. */
@Path("/corrections")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class CorrectionPages {
  private final Caller caller;
  private final OwnPlayers own;
  private final LastHeads last;
  private final Correcting correcting;

  CorrectionPages(Caller caller, OwnPlayers own, LastHeads last, Correcting correcting) {
    this.caller = caller;
    this.own = own;
    this.last = last;
    this.correcting = correcting;
  }

  @CheckedTemplate(basePath = "reading")
  static class Templates {
    private Templates() {}

    static native TemplateInstance corrections(
        List<LastHeads.Line> heads, boolean everybodys, boolean corrected);

    static native TemplateInstance correct(
        PlayerView player,
        HeadRow head,
        MeasureForm form,
        List<CorrectionReason> reasons,
        String why,
        String whyError);
  }

  @GET
  @Transactional
  public TemplateInstance list(@QueryParam("corrected") String corrected) {
    return Templates.corrections(last.lines(), caller.isManager(), corrected != null);
  }

  @GET
  @Path("/{player}/{version}")
  @Transactional
  public TemplateInstance show(
      @PathParam("player") String reference, @PathParam("version") long version) {
    PlayerView player = own.one(reference);
    HeadRow head = head(player, version);
    return page(player, head, MeasureForm.empty(head.hair), "", "");
  }

  @POST
  @Path("/{player}/{version}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response correct(
      @PathParam("player") String reference,
      @PathParam("version") long version,
      @RestForm String commandId,
      @RestForm String why,
      @RestForm String first,
      @RestForm String second,
      @RestForm String third,
      @RestForm String hair,
      @RestForm String confirmed) {
    PlayerView player = own.one(reference);
    UUID id = CommandId.of(commandId);
    String chosen = why == null ? "" : why;
    MeasureForm.Typed typed = MeasureForm.typed(first, second, third, hair, confirmed);
    try {
      correcting.correct(
          id,
          player.player(),
          new Correcting.Entry(version, typed.readings(), chosen, typed.hair(), typed.confirmed()),
          caller.id());
      // Not seeOther: it would put the root path before a path that has it already.
      return Response.status(Response.Status.SEE_OTHER)
          .header(HttpHeaders.LOCATION, "/sizing/corrections?corrected=yes")
          .build();
    } catch (Problem problem) {
      MeasureForm form = MeasureForm.after(problem, id, typed);
      return Response.status(problem.status())
          .entity(page(player, head(player, version), form, chosen, whyError(problem)).render())
          .build();
    }
  }

  private static TemplateInstance page(
      PlayerView player, HeadRow head, MeasureForm form, String why, String whyError) {
    return Templates.correct(player, head, form, List.of(CorrectionReason.values()), why, whyError);
  }

  private static HeadRow head(PlayerView player, long version) {
    HeadRow head = HeadRow.findById(new HeadRow.Key(player.player(), version));
    if (head == null) {
      throw Problem.notFound("There is no such measurement, or it was withdrawn.");
    }
    return head;
  }

  private static String whyError(Problem problem) {
    return problem.code().equals("why") ? "Choose what was wrong." : "";
  }
}
