package org.tapeline.inventory.restock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.smallrye.common.annotation.RunOnVirtualThread;
import io.smallrye.mutiny.Multi;
import io.smallrye.mutiny.infrastructure.Infrastructure;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestStreamElementType;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** The restock list: what must be picked, sent and received; it follows what happens. */
@Path("/restock")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
public class RestockPage {
  private static final Duration LOOK_AGAIN = Duration.ofSeconds(1);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE, MMM d, h:mm a", Locale.US);

  private final RestockStore store;
  private final RestockCommands commands;
  private final Places places;

  RestockPage(RestockStore store, RestockCommands commands, Places places) {
    this.store = store;
    this.commands = commands;
    this.places = places;
  }

  @CheckedTemplate(basePath = "restock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Line> lines, String wrong);

    static native TemplateInstance lines(List<Line> lines);
  }

  /**
   * A line of the list.
   *
   * @param commandId the id that a click sends: the same until the request has moved on
   * @param formId the id that the form for what is not all good sends
   */
  public record Line(Restock r, String expected, UUID commandId, UUID formId, NotAllGood said) {
    public boolean canPick() {
      return r.allows(Restock.State.PICKED);
    }

    public boolean canShip() {
      return r.allows(Restock.State.SHIPPED);
    }
  }

  @GET
  @RunOnVirtualThread
  public String show() {
    return Templates.list(lines(), "").render();
  }

  /** Looks again every second and sends the list when it has changed. */
  @GET
  @Path("/live")
  @Produces(MediaType.SERVER_SENT_EVENTS)
  @RestStreamElementType(MediaType.TEXT_HTML)
  @Blocking
  public Multi<String> live() {
    return Multi.createFrom()
        .ticks()
        .every(LOOK_AGAIN)
        .onOverflow()
        .drop()
        .emitOn(Infrastructure.getDefaultExecutor())
        .map(tick -> Templates.lines(lines()).render())
        .skip()
        .repetitions();
  }

  @POST
  @Path("/{request}/{step:pick|ship|receive|cancel}")
  @RunOnVirtualThread
  public Response step(
      @PathParam("request") UUID request,
      @PathParam("step") String step,
      @RestForm String commandId) {
    UUID id = CommandId.of(commandId);
    return answer(
        request,
        NotAllGood.BLANK,
        () ->
            switch (step) {
              case "pick" -> commands.pick(request, id);
              case "ship" -> commands.ship(request, id);
              case "cancel" -> commands.cancel(request, "not-available", id);
              default -> commands.receive(request, Receipt.ALL, id);
            });
  }

  /** A path of its own: a form that came without its fields must not count as all good. */
  @POST
  @Path("/{request}/receive-not-all-good")
  @RunOnVirtualThread
  public Response receive(
      @PathParam("request") UUID request,
      @RestForm String commandId,
      @RestForm String came,
      @RestForm String damaged,
      @RestForm String happened) {
    UUID id = CommandId.of(commandId);
    NotAllGood said = NotAllGood.of(came, damaged, happened);
    return answer(
        request, said, () -> commands.receive(request, said.receipt(store.known(request)), id));
  }

  private Response answer(UUID request, NotAllGood said, Supplier<Answer> does) {
    try {
      does.get();
      return Answers.goTo("/inventory/restock");
    } catch (Problem problem) {
      return refused(problem, request, said.with(problem.errors()));
    } catch (CommandReused e) {
      Problem other =
          Problem.conflict(
              "command-reused",
              "This was sent before with other numbers, and those count. See the list below.");
      return refused(other, request, NotAllGood.BLANK);
    }
  }

  private Response refused(Problem problem, UUID request, NotAllGood said) {
    List<Line> lines =
        store.list(false).stream()
            .map(r -> line(r, r.request().equals(request) ? said : NotAllGood.BLANK))
            .toList();
    return Response.status(problem.status())
        .entity(Templates.list(lines, problem.getMessage()).render())
        .build();
  }

  private List<Line> lines() {
    return store.list(false).stream().map(r -> line(r, NotAllGood.BLANK)).toList();
  }

  private Line line(Restock r, NotAllGood said) {
    String stage = r.says() + r.quantity();
    return new Line(
        r,
        DAY.format(r.expectedAt().atZone(places.zone(r.place()))),
        DerivedId.from(r.request(), stage),
        DerivedId.from(r.request(), stage + "/not-all-good"),
        said);
  }
}
