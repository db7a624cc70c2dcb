package org.tapeline.fitting.fieldapp;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** What a fitter's phone takes along; asked again and again, mostly nothing has changed. */
@Path("/api/field-pack")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class FieldPackResource {
  /** The moment up to which the pack is true, changed or not. */
  static final String AS_OF = "As-Of";

  private final FieldPacks packs;

  FieldPackResource(FieldPacks packs) {
    this.packs = packs;
  }

  @GET
  @Transactional
  public Response take(
      @QueryParam("field") List<String> fields,
      @HeaderParam(HttpHeaders.IF_NONE_MATCH) String held) {
    FieldPack.Sent pack = packs.take(fields);
    String tag = '"' + pack.tag() + '"';
    Response.ResponseBuilder answer =
        held != null && held.contains(pack.tag())
            ? Response.notModified()
            : Response.ok(pack.json());
    return answer
        .header(HttpHeaders.ETAG, tag)
        .header(HttpHeaders.CACHE_CONTROL, "private, no-store")
        .header(AS_OF, pack.asOf().toString())
        .build();
  }
}
