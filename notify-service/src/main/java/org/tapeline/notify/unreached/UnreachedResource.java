package org.tapeline.notify.unreached;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** People not reached, for other programs. */
@Path("/api/unreached")
@RolesAllowed({"equipment-manager", "fitter"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class UnreachedResource {
  private static final int MOST = 500;

  private final UnreachedPeople people;
  private final Reaching reaching;
  private final Caller caller;

  UnreachedResource(UnreachedPeople people, Reaching reaching, Caller caller) {
    this.people = people;
    this.reaching = reaching;
    this.caller = caller;
  }

  /**
   * @param families how many there are in all
   * @param people at most 500, the most urgent first, then the one who waits longest
   */
  public record Listing(int families, List<Unreached> people) {}

  /**
   * @param notices which notices the person was told
   * @param way {@code telephone} or {@code sheet}
   */
  public record Report(List<String> notices, String way) {}

  @GET
  @Operation(summary = "People whom somebody has to reach, of all fields or of the caller's own")
  public Listing list() {
    UnreachedPeople.Found found =
        people.list(caller.isManager() ? Optional.empty() : Optional.of(caller.fields()), MOST);
    return new Listing(found.families(), found.shown());
  }

  @POST
  @Path("/{guardian}/reached")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "The person was told by telephone, or has the slip")
  public Response reached(
      @HeaderParam(CommandId.HEADER) String commandId,
      @PathParam("guardian") UUID guardian,
      Report report) {
    UUID id = CommandId.of(commandId);
    if (report == null) {
      throw Problem.badRequest(
          "no-report", "Say of which notices, and how the person was reached.");
    }
    return Answers.of(
        id,
        reaching.reached(
            guardian, Reports.ids("notices", report.notices()), Reports.way(report.way()), id));
  }
}
