package org.tapeline.stack.gateway;

import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;

/** What a browser may do with our pages: show them, run our own scripts, nothing else. */
final class SecurityHeaders {
  private static final String POLICY =
      "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
          + " frame-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self';"
          + " frame-ancestors 'self'";

  private SecurityHeaders() {}

  static void add(RoutingContext context) {
    context.addHeadersEndHandler(
        end -> {
          MultiMap headers = context.response().headers();
          putAbsent(headers, "Content-Security-Policy", POLICY);
          putAbsent(headers, "X-Content-Type-Options", "nosniff");
          putAbsent(headers, "Referrer-Policy", "same-origin");
        });
    context.next();
  }

  private static void putAbsent(MultiMap headers, String name, String value) {
    if (!headers.contains(name)) {
      headers.set(name, value);
    }
  }
}
