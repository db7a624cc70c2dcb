package org.tapeline.inventory.stock;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Counts as JSON. */
@Path("/api/stock/counts")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class CountResource {
  private final Counts counts;

  CountResource(Counts counts) {
    this.counts = counts;
  }

  @POST
  public Response count(@HeaderParam(CommandId.HEADER) String commandId, CountSheet sheet) {
    UUID id = CommandId.of(commandId);
    CountSheet said = sheet == null ? new CountSheet("", List.of()) : sheet;
    return Answers.of(id, counts.take(said, id));
  }
}
