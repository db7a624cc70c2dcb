package org.tapeline.journal.quarkus;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.chain.Chains;
import org.tapeline.journal.inbox.ParkedEvents;

/** Shows a chain's events and the parked ones, and tries parked ones again. */
@Path("/api")
@RolesAllowed("equipment-manager")
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class JournalResource {
  private final Chains chains;
  private final ParkedEvents parked;

  JournalResource(Chains chains, ParkedEvents parked) {
    this.chains = chains;
    this.parked = parked;
  }

  @GET
  @Path("/chains/{correlationId}")
  public List<Chains.Link> chain(@PathParam("correlationId") UUID correlationId) {
    return chains.of(correlationId);
  }

  @GET
  @Path("/parked")
  public List<ParkedEvents.Parked> parked() {
    return parked.all();
  }

  @POST
  @Path("/parked/{stream}/replay")
  public Map<String, Integer> replay(@PathParam("stream") String stream) {
    return Map.of("applied", parked.replay(stream));
  }
}
