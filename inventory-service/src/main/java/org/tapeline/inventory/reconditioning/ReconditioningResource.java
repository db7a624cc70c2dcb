package org.tapeline.inventory.reconditioning;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
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
import org.tapeline.inventory.reconditioning.Drafts.Draft;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** Reconditioning as JSON. */
@Path("/api/reconditioning")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({"equipment-manager", "warehouse"})
@RunOnVirtualThread
public class ReconditioningResource {
  private final DueList due;
  private final BatchStore store;
  private final BatchCommands commands;

  ReconditioningResource(DueList due, BatchStore store, BatchCommands commands) {
    this.due = due;
    this.store = store;
    this.commands = commands;
  }

  /** A batch with its helmets. */
  public record Whole(BatchSummary batch, List<BatchLine> helmets) {}

  /** Tags that are packed. */
  public record Tags(List<String> tags) {
    public Tags {
      tags = tags == null ? List.of() : List.copyOf(tags);
    }
  }

  @GET
  @Path("/plan")
  @Consumes(MediaType.WILDCARD)
  public BatchPlan plan(@QueryParam("on") String on, @QueryParam("by") String by) {
    Asked asked = Asked.of(on, by, due);
    return due.plan(asked.on(), asked.by());
  }

  @GET
  @Path("/batches")
  @Consumes(MediaType.WILDCARD)
  public List<BatchSummary> batches() {
    return store.all();
  }

  @GET
  @Path("/batches/{batch}")
  @Consumes(MediaType.WILDCARD)
  public Whole one(@PathParam("batch") UUID batch) {
    return new Whole(store.known(batch), store.lines(batch));
  }

  @POST
  @Path("/batches")
  public Response begin(@HeaderParam(CommandId.HEADER) String commandId, Draft draft) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.begin(draft == null ? NOTHING : draft, id));
  }

  private static final Draft NOTHING = new Draft("", "", List.of());

  @POST
  @Path("/batches/{batch}/pack")
  public Response pack(
      @PathParam("batch") UUID batch,
      @HeaderParam(CommandId.HEADER) String commandId,
      Tags packed) {
    UUID id = CommandId.of(commandId);
    List<String> tags = packed == null ? List.of() : packed.tags();
    return Answers.of(id, commands.pack(batch, tags, true, id));
  }

  @POST
  @Path("/batches/{batch}/send")
  public Response send(
      @PathParam("batch") UUID batch, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.send(batch, id));
  }

  @POST
  @Path("/batches/{batch}/receive")
  public Response receive(
      @PathParam("batch") UUID batch,
      @HeaderParam(CommandId.HEADER) String commandId,
      Receipt receipt) {
    UUID id = CommandId.of(commandId);
    Receipt said = receipt == null ? new Receipt("", "", "", "", List.of()) : receipt;
    return Answers.of(id, commands.receive(batch, said, id));
  }

  @POST
  @Path("/batches/{batch}/close")
  public Response close(
      @PathParam("batch") UUID batch, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.close(batch, id));
  }
}
