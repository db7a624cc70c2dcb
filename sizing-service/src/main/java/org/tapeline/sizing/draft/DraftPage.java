package org.tapeline.sizing.draft;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.draft.Drafts.Shown;

/** Drafts of charts beside those in force, for whoever decides. */
@Path("/charts/drafts")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class DraftPage {
  private final Drafts drafts;

  DraftPage(Drafts drafts) {
    this.drafts = drafts;
  }

  @CheckedTemplate(basePath = "draft")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<DraftView> drafts, String done, String refused);
  }

  @GET
  public TemplateInstance show(
      @QueryParam("published") String published, @QueryParam("thrown-away") String thrownAway) {
    String done = "";
    if (isModel(published)) {
      done =
          ModelName.said(published)
              + " is in force. Players whose advice changed were advised anew.";
    } else if (isModel(thrownAway)) {
      done = "The draft of " + ModelName.said(thrownAway) + " is thrown away.";
    }
    return Templates.list(views("", ""), done, "");
  }

  @POST
  @Path("/{model}/publish")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response publish(
      @PathParam("model") String model,
      @RestForm String commandId,
      @RestForm String version,
      @RestForm String draft) {
    try {
      drafts.publish(CommandId.of(commandId), model, shown(version, draft));
      return Answers.goTo("/sizing/charts/drafts?published=" + model);
    } catch (Problem problem) {
      return refused(model, problem);
    }
  }

  @POST
  @Path("/{model}/throw-away")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response throwAway(@PathParam("model") String model, @RestForm String commandId) {
    try {
      drafts.throwAway(CommandId.of(commandId), model);
      return Answers.goTo("/sizing/charts/drafts?thrown-away=" + model);
    } catch (Problem problem) {
      return refused(model, problem);
    }
  }

  /** Beside the draft that it is about; above all of them when that one is gone. */
  private Response refused(String model, Problem problem) {
    List<DraftView> views = views(model, problem.getMessage());
    boolean gone = views.stream().noneMatch(view -> view.p().model().equals(model));
    return Response.status(problem.status())
        .entity(Templates.list(views, "", gone ? problem.getMessage() : "").render())
        .build();
  }

  private List<DraftView> views(String refusedModel, String refused) {
    return drafts.previews().stream()
        .map(p -> new DraftView(p, p.model().equals(refusedModel) ? refused : ""))
        .toList();
  }

  private static Shown shown(String version, String draft) {
    try {
      return new Shown(Integer.valueOf(version), UUID.fromString(draft));
    } catch (IllegalArgumentException | NullPointerException e) {
      return null;
    }
  }

  private static boolean isModel(String text) {
    return text != null && text.matches("[a-z0-9-]{1,30}");
  }
}
