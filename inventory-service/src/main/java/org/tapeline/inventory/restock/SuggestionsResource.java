package org.tapeline.inventory.restock;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.restock.SuggestionCommands.Ask;
import org.tapeline.inventory.restock.Suggestions.Mode;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** What to request for the shelves, as JSON. */
@Path("/api/restock/suggestions")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class SuggestionsResource {
  private final Suggestions suggestions;
  private final SuggestionCommands commands;

  SuggestionsResource(Suggestions suggestions, SuggestionCommands commands) {
    this.suggestions = suggestions;
    this.commands = commands;
  }

  @GET
  public List<Suggestion> list(
      @QueryParam("mode") String mode,
      @QueryParam("place") String place,
      @QueryParam("budget") String budget) {
    return suggestions.all(Mode.of(mode), place == null ? "" : place, Money.of(budget));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response request(@HeaderParam(CommandId.HEADER) String commandId, Ask ask) {
    UUID id = CommandId.of(commandId);
    return Answers.of(id, commands.request(ask, id));
  }
}
