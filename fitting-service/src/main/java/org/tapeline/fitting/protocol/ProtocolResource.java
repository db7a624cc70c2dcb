package org.tapeline.fitting.protocol;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;

/** The protocol in force, as JSON and as a page to read. */
@Path("/")
@RolesAllowed({"fitter", "coach", "equipment-manager"})
public class ProtocolResource {
  private final Protocols protocols;

  ProtocolResource(Protocols protocols) {
    this.protocols = protocols;
  }

  @CheckedTemplate(basePath = "protocol")
  static class Templates {
    private Templates() {}

    static native TemplateInstance show(Protocol protocol, List<Remedy> remedies);
  }

  Protocol json() {
    return protocols.inForce();
  }

  @GET
  @Path("/protocol")
  @Produces(MediaType.TEXT_HTML)
  public TemplateInstance page() {
    return Templates.show(protocols.inForce(), protocols.inForce().remedies());
  }
}
