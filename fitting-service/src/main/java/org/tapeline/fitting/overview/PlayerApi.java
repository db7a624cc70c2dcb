package org.tapeline.fitting.overview;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/**
 * A player for programs. A class of its own: the path of a class decides who is asked, and {@code
 * /api} is also the journal's.
 */
@Path("/api/players")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class PlayerApi {
  private final PlayerPages shown;

  PlayerApi(PlayerPages shown) {
    this.shown = shown;
  }

  @GET
  @Path("/{player}")
  @Transactional
  public PlayerView json(@PathParam("player") String reference) {
    return shown.json(reference);
  }
}
