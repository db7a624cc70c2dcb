package org.tapeline.inventory.restock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.PickLines.Group;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.file.PagePdf;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** The pick list: on a phone between the shelves, or on paper. */
@Path("/restock/picklist")
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class PickListPage {
  private static final String PDF = "application/pdf";
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE, MMM d, h:mm a", Locale.US);

  private final PickLines lines;
  private final PickCommands commands;
  private final Places places;
  private final Clock clock;

  PickListPage(PickLines lines, PickCommands commands, Places places, Clock clock) {
    this.lines = lines;
    this.commands = commands;
    this.places = places;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "restock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance picklist(View view, String wrong);

    static native TemplateInstance picklistPaper(View view);
  }

  /**
   * @param from a place's code, or {@code outside}
   * @param sources where there is something to take, with how many requests
   */
  public record View(
      String from,
      String name,
      String printed,
      Map<String, Long> sources,
      List<Group> groups,
      UUID commandId) {

    public long count() {
      return groups.stream().mapToLong(g -> g.lines().size()).sum();
    }

    public long taken() {
      return groups.stream().flatMap(g -> g.lines().stream()).filter(PickLines.Line::taken).count();
    }
  }

  @GET
  @Produces(MediaType.TEXT_HTML)
  public String show(@QueryParam("from") @DefaultValue("") String from) {
    return Templates.picklist(view(from), "").render();
  }

  @GET
  @Path("/paper.pdf")
  @Produces(PDF)
  public Response paper(@QueryParam("from") @DefaultValue("") String from) {
    View view = view(from);
    return Response.ok(PagePdf.of(Templates.picklistPaper(view).render()), PDF)
        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"pick-list.pdf\"")
        .build();
  }

  private View view(String from) {
    return new View(
        from,
        from.equals(PickLines.OUTSIDE)
            ? "outside"
            : places.find(from).map(Places.Place::name).orElse(from),
        DAY.format(clock.instant().atZone(places.zone(from))),
        lines.sources(),
        lines.from(from),
        UuidV7.next());
  }

  @POST
  @Path("/{request}")
  @Produces(MediaType.TEXT_HTML)
  public Response take(
      @PathParam("request") UUID request,
      @RestForm String commandId,
      @RestForm String from,
      @RestForm boolean taken) {
    UUID id = CommandId.of(commandId);
    return answer(from, "#r-" + request, () -> commands.take(request, taken, id));
  }

  @POST
  @Path("/done")
  @Produces(MediaType.TEXT_HTML)
  public Response done(@RestForm String commandId, @RestForm String from) {
    UUID id = CommandId.of(commandId);
    return answer(from, "", () -> commands.done(from, id));
  }

  private Response answer(String from, String where, Runnable does) {
    String back = from == null || !from.matches("[A-Za-z0-9-]{1,30}") ? "" : from;
    try {
      does.run();
      return Answers.goTo("/inventory/restock/picklist?from=" + back + where);
    } catch (Problem problem) {
      return Response.status(problem.status())
          .entity(Templates.picklist(view(back), problem.getMessage()).render())
          .build();
    }
  }
}
