package org.tapeline.journal.quarkus.http;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.tapeline.journal.Answer;

/** Answers to commands, with the id by which everything that follows can be found. */
public final class Answers {
  private Answers() {}

  public static Response of(UUID commandId, Answer answer) {
    return Response.status(answer.status())
        .header("Correlation-Id", commandId)
        .type(MediaType.APPLICATION_JSON)
        .entity(answer.json())
        .build();
  }

  /**
   * To another page. The header is written as it is: a URI would be resolved against the service's
   * root path, which the path has already.
   */
  public static Response goTo(String path) {
    return Response.status(Response.Status.SEE_OTHER).header(HttpHeaders.LOCATION, path).build();
  }
}
