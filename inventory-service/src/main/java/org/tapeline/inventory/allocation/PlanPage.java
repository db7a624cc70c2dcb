package org.tapeline.inventory.allocation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.allocation.PlanViews.Choice;
import org.tapeline.inventory.allocation.PlanViews.Entry;
import org.tapeline.inventory.allocation.PlanViews.View;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Answer;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.file.CsvAnswer;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Plans for many helmets at once: made, compared, committed. */
@Path("/plans")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class PlanPage {
  private static final int MOST_PLANS = 20;
  private static final int MOST_LINES = 300;

  private final Plans plans;
  private final PlanViews views;
  private final Places places;
  private final Caller caller;

  PlanPage(Plans plans, PlanViews views, Places places, Caller caller) {
    this.plans = plans;
    this.views = views;
    this.places = places;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "allocation")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<Entry> plans,
        List<Places.Place> places,
        List<Choice> kinds,
        List<Choice> holds,
        PlanAsk said,
        String from,
        UUID commandId,
        String wrong);

    static native TemplateInstance one(
        View view, View other, List<Entry> others, UUID commandId, int most, String wrong);
  }

  /**
   * @param from the plan whose wishes are to be changed
   * @param hold the hold for whose players a plan is wanted
   */
  @GET
  public String list(@QueryParam("from") UUID from, @QueryParam("hold") UUID hold) {
    PlanAsk blank = hold == null ? PlanAsk.BLANK : PlanAsk.ofHold(hold);
    PlanAsk said = from == null ? blank : PlanAsk.of(views.one(from).plan().wish());
    return form(said, from == null ? "" : from.toString(), "");
  }

  private String form(PlanAsk said, String from, String wrong) {
    return Templates.list(
            views.newest(MOST_PLANS),
            places.all(),
            views.kinds(),
            views.openHolds(),
            said,
            from,
            UuidV7.next(),
            wrong)
        .render();
  }

  @POST
  public Response make(
      @RestForm String commandId,
      @RestForm String from,
      @RestForm String sort,
      @RestForm String hold,
      @RestForm String field,
      @RestForm List<String> without,
      @RestForm String kind,
      @RestForm String place,
      @RestForm String pieces,
      @RestForm String otherModels) {
    PlanAsk said =
        new PlanAsk(sort, hold, field, without, kind, place, pieces, otherModels, List.of());
    String before = from == null || !from.matches("[0-9a-f-]{36}") ? "" : from;
    try {
      UUID id = CommandId.of(commandId);
      plans.draft(
          said.wish(places.all().stream().map(Places.Place::code).toList()), caller.id(), id);
      String with = before.isEmpty() ? "" : "?with=" + before;
      return Answers.goTo("/inventory/plans/" + DerivedId.from(id, "plan") + with);
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(form(said.with(problem.errors()), before, problem.getMessage()))
          .build();
    }
  }

  /**
   * @param with the plan that stands beside it
   */
  @GET
  @Path("/{plan}")
  public String one(@PathParam("plan") UUID plan, @QueryParam("with") UUID with) {
    return show(plan, Optional.ofNullable(with), "");
  }

  /** Helmet by helmet, for handing out. */
  @GET
  @Path("/{plan}/helmets.csv")
  @Produces("text/csv")
  public Response csv(@PathParam("plan") UUID plan) {
    return CsvAnswer.of(
        "plan-" + plan,
        List.of("field", "tag", "model", "size", "from", "liking", "minutes", "player", "outcome"),
        views.one(plan).lines().stream().map(PlanPage::cells).toList());
  }

  private static List<Object> cells(PlanLine l) {
    return List.of(
        l.field(),
        l.isToBuy() ? "to be bought" : l.tag(),
        l.model(),
        l.size(),
        l.place(),
        l.liking(),
        l.minutes(),
        l.player(),
        l.outcome().orElse(""));
  }

  private String show(UUID plan, Optional<UUID> with, String wrong) {
    View view = views.one(plan);
    List<Entry> others =
        views.newest(MOST_PLANS).stream().filter(e -> !e.plan().plan().equals(plan)).toList();
    UUID commandId = DerivedId.from(plan, view.plan().state().name());
    return Templates.one(
            view, with.map(views::one).orElse(null), others, commandId, MOST_LINES, wrong)
        .render();
  }

  @POST
  @Path("/{plan}/commit")
  public Response commit(@PathParam("plan") UUID plan, @RestForm String commandId) {
    return does(plan, () -> plans.commit(plan, caller.id(), CommandId.of(commandId)));
  }

  @POST
  @Path("/{plan}/release")
  public Response release(@PathParam("plan") UUID plan, @RestForm String commandId) {
    return does(plan, () -> plans.release(plan, CommandId.of(commandId)));
  }

  private Response does(UUID plan, Supplier<Answer> command) {
    try {
      command.get();
      return Answers.goTo("/inventory/plans/" + plan);
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(show(plan, Optional.empty(), problem.getMessage()))
          .build();
    }
  }
}
