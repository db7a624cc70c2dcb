package org.tapeline.inventory.reconditioning;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.reconditioning.Drafts.Draft;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.file.CsvAnswer;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** What is due, what of it goes now, and the batches. */
@Path("/reconditioning")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class ReconditioningPage {
  private final DueList due;
  private final BatchStore store;
  private final BatchCommands commands;
  private final PolicyOnFile policy;
  private final Places places;

  ReconditioningPage(
      DueList due, BatchStore store, BatchCommands commands, PolicyOnFile policy, Places places) {
    this.due = due;
    this.store = store;
    this.commands = commands;
    this.policy = policy;
    this.places = places;
  }

  @CheckedTemplate(basePath = "reconditioning")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        DueView due,
        List<BatchSummary> batches,
        List<BatchLine> missing,
        List<Places.Place> places,
        ReconditioningPolicy policy,
        String wrong);
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public Response show(
      @QueryParam("on") String on,
      @QueryParam("by") String by,
      @QueryParam("place") String place,
      @QueryParam("model") String model,
      @QueryParam("size") String size) {
    try {
      return Response.ok(page(Asked.of(on, by, due), new DueFilter(place, model, size), ""))
          .build();
    } catch (Problem problem) {
      return refused(problem);
    }
  }

  private Response refused(Problem problem) {
    String page = page(Asked.of("", "", due), new DueFilter("", "", ""), problem.getMessage());
    return Response.status(problem.status()).type(MediaType.TEXT_HTML).entity(page).build();
  }

  private String page(Asked asked, DueFilter filter, String wrong) {
    BatchPlan plan = due.plan(asked.on(), asked.by());
    DueView view = DueView.of(asked, filter, plan, policy.get().mostPerBatch());
    return Templates.list(view, store.all(), store.missing(), places.all(), policy.get(), wrong)
        .render();
  }

  @GET
  @Path("/due.csv")
  @Produces("text/csv")
  public Response csv(
      @QueryParam("on") String on,
      @QueryParam("by") String by,
      @QueryParam("place") String place,
      @QueryParam("model") String model,
      @QueryParam("size") String size) {
    Asked asked = Asked.of(on, by, due);
    DueFilter filter = new DueFilter(place, model, size);
    List<List<String>> rows =
        due.plan(asked.on(), asked.by()).steps().stream()
            .filter(s -> filter.fits(s.standing().helmet()))
            .map(s -> DueRow.of(s, false).cells())
            .toList();
    return CsvAnswer.of("reconditioning-due-" + asked.by(), DueRow.HEADER, rows);
  }

  @POST
  @Path("/begin")
  @Produces(MediaType.TEXT_HTML)
  public Response begin(
      @RestForm String commandId,
      @RestForm String place,
      @RestForm String reconditioner,
      @RestForm List<String> tags) {
    try {
      commands.begin(new Draft(place, reconditioner, tags), CommandId.of(commandId));
      return Answers.goTo(
          "/inventory/reconditioning/" + DerivedId.from(CommandId.of(commandId), "batch"));
    } catch (Problem problem) {
      return refused(problem);
    }
  }
}
