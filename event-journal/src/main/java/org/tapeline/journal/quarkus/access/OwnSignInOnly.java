package org.tapeline.journal.quarkus.access;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/**
 * Nobody is signed in as somebody else by a page of somebody else, to enter under that name what
 * the person takes for the own work.
 */
@ApplicationScoped
public class OwnSignInOnly {
  /** Before whoever is asked is known, which is at 200. */
  private static final int FIRST = 250;

  void mount(@Observes Filters filters) {
    filters.register(OwnSignInOnly::look, FIRST);
  }

  private static void look(RoutingContext context) {
    HttpServerRequest request = context.request();
    if (!request.path().endsWith("/j_security_check")) {
      context.next();
      return;
    }
    Sender sender =
        new Sender(
            request.getHeader("Sec-Fetch-Site"),
            request.getHeader("Origin"),
            String.valueOf(request.authority()));
    if (sender.isForeign()) {
      context.response().setStatusCode(403).end();
    } else {
      context.next();
    }
  }
}
