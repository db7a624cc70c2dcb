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
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestStreamElementType;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.RestockWork.Receipt;
import org.tapeline.journal.DerivedId;
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
   */
  public record Line(Restock r, String expected, UUID commandId) {
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
      @RestForm String commandId,
      @RestForm Integer quantity,
      @RestForm Integer damaged) {
    UUID id = CommandId.of(commandId);
    try {
      switch (step) {
        case "pick" -> commands.pick(request, id);
        case "ship" -> commands.ship(request, id);
        case "cancel" -> commands.cancel(request, "not-available", id);
        default -> commands.receive(request, receipt(quantity, damaged), id);
      }
      return Response.status(303).header("Location", "/inventory/restock").build();
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(Templates.list(lines(), problem.getMessage()).render())
          .build();
    }
  }

  private static Receipt receipt(Integer quantity, Integer damaged) {
    return new Receipt(
        Optional.ofNullable(quantity),
        Optional.ofNullable(damaged),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private List<Line> lines() {
    return store.list(false).stream()
        .map(
            r ->
                new Line(
                    r,
                    DAY.format(r.expectedAt().atZone(places.zone(r.place()))),
                    DerivedId.from(r.request(), r.says() + r.quantity())))
        .toList();
  }
}
