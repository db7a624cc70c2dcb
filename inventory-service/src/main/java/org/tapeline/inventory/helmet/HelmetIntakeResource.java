package org.tapeline.inventory.helmet;

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
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Helmets that come, and that are on their way, as JSON. */
@Path("/api/helmets")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class HelmetIntakeResource {
  private final ReceiveDesk receive;
  private final HelmetOrders orders;

  HelmetIntakeResource(ReceiveDesk receive, HelmetOrders orders) {
    this.receive = receive;
    this.orders = orders;
  }

  @POST
  public Response receive(@HeaderParam(CommandId.HEADER) String commandId, ReceiveDesk.One one) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, receive.receiveOne(one, id));
  }

  @POST
  @Path("/orders")
  public Response order(@HeaderParam(CommandId.HEADER) String commandId, HelmetOrders.Ask ask) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, orders.order(ask, id));
  }
}
