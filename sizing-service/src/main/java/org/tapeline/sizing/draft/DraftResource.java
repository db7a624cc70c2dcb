package org.tapeline.sizing.draft;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
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
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.sizing.draft.Drafts.Shown;

/** Drafts of charts as JSON: what they would change, and what becomes of them. */
@Path("/api/charts/drafts")
@RolesAllowed("equipment-manager")
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class DraftResource {
  private final Drafts drafts;

  DraftResource(Drafts drafts) {
    this.drafts = drafts;
  }

  @GET
  public List<DraftPreview> previews() {
    return drafts.previews();
  }

  @POST
  @Path("/{model}/publish")
  @Consumes(MediaType.APPLICATION_JSON)
  public Response publish(
      @PathParam("model") String model,
      @HeaderParam(CommandId.HEADER) String commandId,
      Shown shown) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, drafts.publish(id, model, shown));
  }

  @DELETE
  @Path("/{model}")
  public Response throwAway(
      @PathParam("model") String model, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, drafts.throwAway(id, model));
  }
}
