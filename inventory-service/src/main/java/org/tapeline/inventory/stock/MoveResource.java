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
import java.util.UUID;
import org.tapeline.inventory.stock.HandMoves.Asked;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Moves by hand as JSON. */
@Path("/api/stock/moves")
@RolesAllowed({"equipment-manager", "warehouse"})
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class MoveResource {
  private final HandMoves moves;

  MoveResource(HandMoves moves) {
    this.moves = moves;
  }

  @POST
  public Response move(@HeaderParam(CommandId.HEADER) String commandId, Asked asked) {
    UUID id = CommandId.of(commandId);
    Asked said = asked == null ? new Asked("", "", "", "", 0, "") : asked;
    return Answers.of(id, moves.move(said, id));
  }
}
