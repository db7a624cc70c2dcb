package org.tapeline.fitting.recheck;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;

/** The form on the player's page by which a change of hair is noted. */
@Path("/players/{player}/hair")
@RolesAllowed({"fitter", "equipment-manager"})
@Consumes(MediaType.APPLICATION_FORM_URLENCODED)
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class HairPage {
  private final HairDesk desk;

  HairPage(HairDesk desk) {
    this.desk = desk;
  }

  @POST
  public Response note(
      @PathParam("player") String player, @RestForm String commandId, @RestForm String hair) {
    UUID id = CommandId.of(commandId);
    desk.note(id, new HairDesk.Changed(player, hair));
    return Answers.goTo("/fitting/players/" + player);
  }
}
