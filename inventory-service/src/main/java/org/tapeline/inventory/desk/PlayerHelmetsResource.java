package org.tapeline.inventory.desk;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.desk.PlayerHelmets.Has;
import org.tapeline.journal.quarkus.http.Problem;

/** The helmets of some players as JSON, for a page that knows their names from elsewhere. */
@Path("/api/player-helmets")
@RolesAllowed({"fitter", "equipment-manager", "warehouse"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class PlayerHelmetsResource {
  private static final int MOST = 100;

  private final PlayerHelmets helmets;

  PlayerHelmetsResource(PlayerHelmets helmets) {
    this.helmets = helmets;
  }

  @GET
  public List<Has> of(@QueryParam("player") List<UUID> players) {
    if (players.size() > MOST) {
      throw Problem.badRequest("too-many", "Ask for at most " + MOST + " players at a time.");
    }
    return helmets.of(players);
  }
}
