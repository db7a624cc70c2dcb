package org.tapeline.fitting.refit;

import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Open re-fit cases for programs. */
@Path("/api/refits")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.APPLICATION_JSON)
@RunOnVirtualThread
public class RefitResource {
  private final OpenRefits refits;
  private final Caller caller;

  RefitResource(OpenRefits refits, Caller caller) {
    this.refits = refits;
    this.caller = caller;
  }

  /** Of a field, or of all own fields. */
  @GET
  @Transactional
  public List<RefitView> open(@QueryParam("field") String field) {
    boolean one = field != null && !field.isBlank();
    if (one && !caller.mayWorkAt(field)) {
      throw Problem.otherField("You do not work at the field " + field + ".");
    }
    return refits.all().stream()
        .filter(c -> caller.mayWorkAt(c.field()))
        .filter(c -> !one || c.field().equals(field))
        .toList();
  }
}
