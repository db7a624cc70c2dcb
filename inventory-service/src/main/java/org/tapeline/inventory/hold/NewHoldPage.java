package org.tapeline.inventory.hold;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** A new hold: asked for, seen what it concerns, placed. */
@Path("/holds/new")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class NewHoldPage {
  private final HoldDesk desk;
  private final HoldCounts counts;
  private final Database database;
  private final Caller caller;

  NewHoldPage(HoldDesk desk, HoldCounts counts, Database database, Caller caller) {
    this.desk = desk;
    this.counts = counts;
    this.database = database;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "hold")
  static class Templates {
    private Templates() {}

    static native TemplateInstance form(HoldAsk said, List<String> models, HoldWords wrong);

    static native TemplateInstance preview(HoldAsk said, HoldPreview preview, UUID commandId);
  }

  @GET
  public String blank() {
    return form(HoldAsk.BLANK, HoldWords.NONE);
  }

  private String form(HoldAsk said, HoldWords wrong) {
    List<String> models =
        database.list("select distinct model from helmet order by 1", row -> row.getString(1));
    return Templates.form(said, models, wrong).render();
  }

  /** The same form three times: asked, seen what it would do, placed; or changed again. */
  @POST
  public Response next(
      @RestForm String step,
      @RestForm String commandId,
      @RestForm String reason,
      @RestForm String reference,
      @RestForm String model,
      @RestForm String lots,
      @RestForm String madeFrom,
      @RestForm String madeTo,
      @RestForm String tags) {
    HoldAsk said = new HoldAsk(reason, reference, model, lots, madeFrom, madeTo, tags);
    try {
      if ("change".equals(step)) {
        return Response.ok(form(said, HoldWords.NONE)).build();
      }
      if ("place".equals(step)) {
        UUID id = CommandId.of(commandId);
        desk.place(said, caller.id(), id);
        return Answers.goTo("/inventory/holds/" + DerivedId.from(id, "hold"));
      }
      HoldPreview preview = counts.of(said.criteria());
      return Response.ok(Templates.preview(said, preview, UuidV7.next()).render()).build();
    } catch (Problem problem) {
      return Response.status(problem.status()).entity(form(said, HoldWords.of(problem))).build();
    }
  }
}
