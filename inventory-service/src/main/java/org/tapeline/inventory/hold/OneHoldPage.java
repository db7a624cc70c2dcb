package org.tapeline.inventory.hold;

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
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.hold.HoldList.Line;
import org.tapeline.inventory.hold.HoldList.OfField;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.file.CsvAnswer;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** A hold with its helmets by field: laid aside one by one, and lifted. */
@Path("/holds/{hold}")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class OneHoldPage {
  private static final int MOST = 300;

  private final HoldDesk desk;
  private final HoldAccess access;
  private final Places places;
  private final Caller caller;

  OneHoldPage(HoldDesk desk, HoldAccess access, Places places, Caller caller) {
    this.desk = desk;
    this.access = access;
    this.places = places;
    this.caller = caller;
  }

  @CheckedTemplate(basePath = "hold")
  static class Templates {
    private Templates() {}

    static native TemplateInstance one(
        Hold hold,
        List<OfField> fields,
        List<Places.Place> places,
        HoldLift said,
        HoldWords wrong,
        boolean manager,
        int most,
        UUID commandId);

    static native TemplateInstance lift(
        Hold hold, HoldLift said, int helmets, List<String> tags, UUID commandId);
  }

  @GET
  public String one(@PathParam("hold") UUID hold) {
    return show(hold, HoldLift.BLANK, HoldWords.NONE);
  }

  private String show(UUID hold, HoldLift said, HoldWords wrong) {
    Hold known = desk.known(hold);
    List<OfField> fields = HoldList.byField(access.lines(hold));
    boolean manager = caller.isManager();
    return Templates.one(known, fields, places.all(), said, wrong, manager, MOST, UuidV7.next())
        .render();
  }

  @GET
  @Path("/helmets.csv")
  @Produces("text/csv")
  public Response csv(@PathParam("hold") UUID hold) {
    List<List<Object>> rows =
        access.lines(desk.known(hold).hold()).stream().map(OneHoldPage::row).toList();
    List<String> header =
        List.of("field", "tag", "model", "size", "lot", "place", "state", "player", "put_aside");
    return CsvAnswer.of("hold-helmets", header, rows);
  }

  private static List<Object> row(Line l) {
    String aside = l.aside() ? "yes" : "no";
    return List.of(
        l.field(),
        l.tag(),
        l.model(),
        l.size(),
        l.lot(),
        l.place(),
        l.state(),
        l.player().map(UUID::toString).orElse(""),
        l.under() ? aside : "lifted");
  }

  @POST
  @Path("/put-aside")
  public Response putAside(
      @PathParam("hold") UUID hold, @RestForm String commandId, @RestForm String tag) {
    try {
      String read = tag == null ? "" : tag.strip().toUpperCase(Locale.ROOT);
      Line line = access.mine(desk.known(hold).hold(), read);
      UUID id = CommandId.of(commandId);
      desk.putAside(hold, line.tag(), line.place(), caller.id(), id);
      return Answers.goTo("/inventory/holds/" + hold + "#" + line.field());
    } catch (Problem problem) {
      return refused(hold, HoldLift.BLANK, problem);
    }
  }

  /** First what it would free, then the lift itself. */
  @POST
  @Path("/lift")
  @RolesAllowed("equipment-manager")
  public Response lift(
      @PathParam("hold") UUID hold,
      @RestForm String step,
      @RestForm String commandId,
      @RestForm String scope,
      @RestForm String lots,
      @RestForm String place,
      @RestForm String tags) {
    HoldLift said = new HoldLift(scope, lots, place, tags);
    try {
      if ("lift".equals(step)) {
        desk.lift(hold, said, caller.id(), CommandId.of(commandId));
        return Answers.goTo("/inventory/holds/" + hold);
      }
      List<String> free = desk.wouldFree(hold, said);
      List<String> first = free.subList(0, Math.min(free.size(), 20));
      return Response.ok(
              Templates.lift(desk.known(hold), said, free.size(), first, UuidV7.next()).render())
          .build();
    } catch (Problem problem) {
      return refused(hold, said, problem);
    }
  }

  private Response refused(UUID hold, HoldLift said, Problem problem) {
    return Response.status(problem.status())
        .entity(show(hold, said, HoldWords.of(problem)))
        .build();
  }
}
