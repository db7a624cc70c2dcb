package org.tapeline.fitting.fieldapp;

import jakarta.ws.rs.container.ContainerRequestContext;
import java.util.List;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * A phone names who entered what it sends. It is not taken under another name: a phone that changed
 * hands still holds what the one before entered.
 */
public class EnteredBy {
  static final String HEADER = "Entered-By";

  private final Caller caller;

  EnteredBy(Caller caller) {
    this.caller = caller;
  }

  @ServerRequestFilter
  void isTheCaller(ContainerRequestContext request) {
    String fitter = request.getHeaderString(HEADER);
    if (fitter != null && caller.isSignedIn() && !fitter.equals(caller.id())) {
      throw new Problem(
          403,
          "entered-by-other",
          "Entered by somebody else",
          "This was entered by " + fitter + ". Sign in under that name to send it.",
          List.of());
    }
  }
}
