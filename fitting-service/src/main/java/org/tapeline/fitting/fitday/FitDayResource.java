package org.tapeline.fitting.fitday;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
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
  private final Caller caller;
  private final Clock clock;

  FitDayResource(FitDayDesk desk, Caller caller, Clock clock) {
    this.desk = desk;
    this.caller = caller;
    this.clock = clock;
  }

  @GET
  @Transactional
  public List<FitDayView> coming() {
    return FitDayRow.coming(clock.instant()).stream()
        .filter(row -> caller.mayWorkAt(row.field))
        .map(FitDayView::of)
        .toList();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response announce(
      @HeaderParam(CommandId.HEADER) String commandId, FitDayDesk.FitDayBody body) {
    UUID id = CommandId.of(commandId);
    if (body == null) {
      throw Problem.badRequest(
          "body-missing",
          "Send {\"field\":\"NORTH\",\"date\":\"2026-08-31\",\"opens\":\"17:30\","
              + "\"closes\":\"20:00\",\"fitters\":2}.");
    }
    return Answers.of(id, desk.announce(id, body));
  }

  @DELETE
  @Path("/{fitDay}")
  public Response cancel(
      @PathParam("fitDay") UUID fitDay, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, desk.cancel(id, fitDay));
  }
}
