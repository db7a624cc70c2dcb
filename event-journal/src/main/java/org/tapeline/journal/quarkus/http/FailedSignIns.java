package org.tapeline.journal.quarkus.http;

import io.quarkus.security.AuthenticationException;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.List;

/**
 * Who shows a password or a cookie that is none is told so. It is decided before a request reaches
 * any resource, so no mapper sees it.
 */
@ApplicationScoped
public class FailedSignIns {
  private static final Problem NOT_SIGNED_IN =
      new Problem(
          401,
          "not-signed-in",
          "Not signed in",
          "What the request shows to sign in is not right. Sign in and send it again.",
          List.of());

  void listen(@Observes Router router) {
    router.route().failureHandler(FailedSignIns::failed);
  }

  private static void failed(RoutingContext context) {
    // Who typed a wrong password into the form is on the way back to the form.
    if (!(context.failure() instanceof AuthenticationException)
        || context.response().headers().contains(HttpHeaders.LOCATION)
        || context.response().ended()) {
      context.next();
      return;
    }
    context.response().putHeader(HttpHeaders.WWW_AUTHENTICATE, "Basic realm=\"Tapeline\"");
    RawRefusal.send(context, NOT_SIGNED_IN);
  }
}
