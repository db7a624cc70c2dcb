package org.tapeline.sizing.roster;

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
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** Players, their readings and their advice as JSON. */
@Path("/api/players")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class PlayerResource {
  private final Caller caller;
  private final OwnPlayers own;
  private final Players players;
  private final People people;
  private final Measuring measuring;
  private final CommandLog commands;

  PlayerResource(
      Caller caller,
      OwnPlayers own,
      Players players,
      People people,
      Measuring measuring,
      CommandLog commands) {
    this.caller = caller;
    this.own = own;
    this.players = players;
    this.people = people;
    this.measuring = measuring;
    this.commands = commands;
  }

  /**
   * @param words of a name or number, all of which must be found; empty for everybody
   */
  @GET
  @Transactional
  public List<PlayerView> list(
      @QueryParam("field") String field,
      @QueryParam("team") String team,
      @QueryParam("q") String words) {
    return own.search(field, team, words == null ? "" : words, Integer.MAX_VALUE);
  }

  @GET
  @Path("/{player}")
  @Transactional
  public PlayerView one(@PathParam("player") String reference) {
    return own.one(reference);
  }

  @POST
  @Path("/{player}/readings")
  @Consumes(MediaType.APPLICATION_JSON)
  public Response measure(
      @PathParam("player") String reference,
      @HeaderParam(CommandId.HEADER) String commandId,
      Measuring.Entry entry) {
    UUID id = CommandId.of(commandId);
    if (entry == null) {
      throw Problem.badRequest("body-missing", "Send {\"readings\": [\"22 7/8 in\", \"581 mm\"]}.");
    }
    UUID player = own.one(reference).player();
    return Answers.of(id, measuring.record(id, player, entry, caller.id()));
  }

  @DELETE
  @Path("/{player}")
  @RolesAllowed("equipment-manager")
  public Response erase(
      @PathParam("player") String reference, @HeaderParam(CommandId.HEADER) String commandId) {
    UUID id = CommandId.of(commandId);
    UUID player = own.one(reference).player();
    Answer answer =
        commands.once(
            id,
            "erase-player",
            player,
            () -> {
              players.handle(new PlayerCommand.TakeOffRoster(player), Cause.command(id));
              people.erase(player);
              return new Answer(204, null);
            });
    return Answers.of(id, answer);
  }
}
