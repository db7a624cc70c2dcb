package org.tapeline.inventory.restock;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Restock requests as JSON. */
@Path("/api/restock")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class RestockResource {
  private final RestockStore store;
  private final RestockCommands commands;

  RestockResource(RestockStore store, RestockCommands commands) {
    this.store = store;
    this.commands = commands;
  }

  /** Why it is cancelled: not-needed (refused while a case waits), not-available or mistake. */
  public record Cancel(String why) {}

  @GET
  public List<Restock> list(@QueryParam("all") boolean all) {
    return store.list(all);
  }

  @POST
  @Path("/{request}/pick")
  public Response pick(
      @PathParam("request") UUID request, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.pick(request, id));
  }

  @POST
  @Path("/{request}/ship")
  public Response ship(
      @PathParam("request") UUID request, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.ship(request, id));
  }

  @POST
  @Path("/{request}/receive")
  public Response receive(
      @PathParam("request") UUID request,
      @HeaderParam(CommandId.HEADER) String commandId,
      String body) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.receive(request, read(body, Receipt.class), id));
  }

  @POST
  @Path("/{request}/cancel")
  public Response cancel(
      @PathParam("request") UUID request,
      @HeaderParam(CommandId.HEADER) String commandId,
      String body) {
    UUID id = CommandId.of(commandId);
    Cancel cancel = read(body, Cancel.class);
    String why = cancel == null || cancel.why() == null ? "not-needed" : cancel.why();
    if (!why.matches("not-needed|not-available|mistake")) {
      throw Problem.badRequest(
          "why",
          "Say why: not-needed, not-available or mistake.",
          new Problem.FieldError("why", "Write not-needed, not-available or mistake."));
    }
    return Answers.of(id, commands.cancel(request, why, id));
  }

  /** A body may be left out, and with it its type; {@code null} then. */
  private static <T> T read(String body, Class<T> type) {
    try {
      return body == null || body.isBlank() ? null : EventJson.MAPPER.readValue(body, type);
    } catch (JsonProcessingException e) {
      throw Problem.badRequest("malformed-json", "The body is not readable JSON.");
    }
  }
}
