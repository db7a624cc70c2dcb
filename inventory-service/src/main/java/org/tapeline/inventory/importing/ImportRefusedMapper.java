package org.tapeline.inventory.importing;

import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.tapeline.inventory.csv.ImportAnswer.RowError;
import org.tapeline.inventory.csv.ImportRefused;

/** A refused import as a problem that names every wrong value by its row. */
public class ImportRefusedMapper {

  /** The body (RFC 9457) with the errors of all rows. */
  public record Body(
      String type,
      String title,
      int status,
      String detail,
      String instance,
      List<RowError> errors) {}

  @ServerExceptionMapper
  Response refused(ImportRefused refused, UriInfo uri) {
    return Response.status(422)
        .type("application/problem+json")
        .entity(
            new Body(
                "https://tapeline.org/problems/import-refused",
                "Nothing was imported",
                422,
                refused.getMessage() + " Correct them, or import with mode=good-rows.",
                uri.getRequestUri().getPath(),
                refused.errors()))
        .build();
  }
}
