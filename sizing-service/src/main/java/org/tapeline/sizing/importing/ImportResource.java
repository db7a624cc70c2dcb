package org.tapeline.sizing.importing;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.sizing.csv.CsvFile;
import org.tapeline.sizing.csv.ImportAnswer.Mode;
import org.tapeline.sizing.importing.Imports.Then;

/** Imports by CSV. */
@Path("/api/import")
@RolesAllowed("equipment-manager")
@Consumes("text/csv")
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class ImportResource {
  private final Imports imports;

  ImportResource(Imports imports) {
    this.imports = imports;
  }

  @POST
  @Path("/{what:players|charts}")
  public Response run(
      @PathParam("what") String what,
      @HeaderParam(CommandId.HEADER) String commandId,
      @QueryParam("mode") String mode,
      @QueryParam("draft") String draft,
      byte[] csv) {
    UUID id = CommandId.of(commandId);
    String text = CsvFile.text(csv == null ? new byte[0] : csv);
    Answer answer = imports.run(what, id, Mode.of(mode), Then.of(what, draft), text);
    return Answers.of(id, answer);
  }
}
