package org.tapeline.fitting.fitday;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Fit days for programs. */
@Path("/api/fit-days")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class FitDayResource {
  private final FitDayDesk desk;
  private final FitTimes times;
  private final Caller caller;
  private final Clock clock;

  FitDayResource(FitDayDesk desk, FitTimes times, Caller caller, Clock clock) {
    this.desk = desk;
    this.times = times;
    this.caller = caller;
    this.clock = clock;
  }

  @GET
  @Transactional
  public List<FitDayView> coming() {
    return FitDayView.coming(clock.instant()).stream()
        .filter(day -> caller.mayWorkAt(day.field()))
        .toList();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response announce(@HeaderParam(CommandId.HEADER) String commandId, FitDayBody body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.announce(id, present(body)));
  }

  /** The whole day as it is to be; everybody who was booked on it is booked anew. */
  @PUT
  @Path("/{fitDay}")
  @Consumes(MediaType.APPLICATION_JSON)
  public Response move(
      @PathParam("fitDay") UUID fitDay,
      @HeaderParam(CommandId.HEADER) String commandId,
      FitDayBody body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.move(id, fitDay, present(body)));
  }

  private static FitDayBody present(FitDayBody body) {
    if (body == null) {
      throw Problem.badRequest(
          "body-missing",
          "Send {\"field\":\"NORTH\",\"date\":\"2026-08-31\",\"opens\":\"17:30\","
              + "\"closes\":\"20:00\",\"fitters\":2}.");
    }
    return body;
  }

  /** How long a slot at the field is when nobody says otherwise, and why. */
  @GET
  @Path("/minutes")
  @Transactional
  public Minutes minutes(@QueryParam("field") String field) {
    if (field == null || !caller.mayWorkAt(field)) {
      throw Problem.otherField("Name one of your own fields: ?field=NORTH.");
    }
    FitMinutes minutes = times.at(field);
    return new Minutes(
        field, minutes.minutes(), minutes.within(), minutes.checks(), minutes.said());
  }

  /**
   * @param minutesPerFit length of a slot
   * @param within how many of the {@code checks} of the last twelve months took no longer
   */
  public record Minutes(String field, int minutesPerFit, long within, long checks, String said) {}

  @DELETE
  @Path("/{fitDay}")
  public Response cancel(
      @PathParam("fitDay") UUID fitDay, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.cancel(id, fitDay));
  }
}
