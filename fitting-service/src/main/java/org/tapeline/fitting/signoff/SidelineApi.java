package org.tapeline.fitting.signoff;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;

/**
 * The sideline list for programs. A class of its own: the path of a class decides who is asked, and
 * {@code /api} is also the journal's.
 */
@Path("/api/sideline")
@RolesAllowed({"coach", "fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class SidelineApi {
  private final SidelineResource shown;

  SidelineApi(SidelineResource shown) {
    this.shown = shown;
  }

  @GET
  @Transactional
  public SidelineResource.TeamList json(@QueryParam("team") String team) {
    return shown.json(team);
  }
}
