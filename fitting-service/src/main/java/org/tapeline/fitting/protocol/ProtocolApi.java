package org.tapeline.fitting.protocol;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/**
 * The protocol in force for programs. A class of its own: the path of a class decides who is asked,
 * and {@code /api} is also the journal's.
 */
@Path("/api/protocol")
@RolesAllowed({"fitter", "coach", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class ProtocolApi {
  private final ProtocolResource shown;

  ProtocolApi(ProtocolResource shown) {
    this.shown = shown;
  }

  @GET
  @Transactional
  public Protocol json() {
    return shown.json();
  }
}
