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
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** One player after the other on a fit day, with one hand. */
@Path("/station")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class StationPage {
  /** Who was measured within it is done for this fit day. */
  private static final Duration FIT_DAY = Duration.ofHours(24);

  private final Caller caller;
  private final OwnPlayers own;
  private final Measuring measuring;
  private final Clock clock;

  StationPage(Caller caller, OwnPlayers own, Measuring measuring, Clock clock) {
    this.caller = caller;
    this.own = own;
    this.measuring = measuring;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "reading")
  static class Templates {
    private Templates() {}

    /**
     * @param player whose turn it is, or {@code null} when nobody is left
     * @param done who was recorded just now, or {@code null}
     */
    static native TemplateInstance station(
        Station station, List<String> teams, PlayerView player, MeasureForm form, PlayerView done);
  }

  @GET
  @Transactional
  public TemplateInstance next(
      @QueryParam("team") String team,
      @QueryParam("skip") String skip,
      @QueryParam("done") String done) {
    Station station = station(team, skip);
    PlayerView recorded = done == null ? null : own.one(done);
    PlayerView player = station.next().map(own::one).orElse(null);
    return Templates.station(station, own.teams(), player, MeasureForm.empty(), recorded);
  }

  @POST
  @Path("/{player}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response record(
      @PathParam("player") String reference,
      @RestForm String commandId,
      @RestForm String team,
      @RestForm String skip,
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
          .header(
              HttpHeaders.LOCATION,
              Station.of(team, skip, List.of()).addressOfNext() + "&done=" + player.number())
          .build();
    } catch (Problem problem) {
      TemplateInstance page =
          Templates.station(
              station(team, skip),
              own.teams(),
              player,
              MeasureForm.after(problem, id, typed),
              null);
      return Response.status(problem.status()).entity(page.render()).build();
    }
  }

  private Station station(String team, String skip) {
    return Station.of(team, skip, own.waiting(team, clock.instant().minus(FIT_DAY)));
  }
}
