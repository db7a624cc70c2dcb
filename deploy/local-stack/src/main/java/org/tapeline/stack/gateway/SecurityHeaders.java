package org.tapeline.stack.gateway;

import io.vertx.core.MultiMap;
import io.vertx.ext.web.RoutingContext;

/**
 * What a browser may do with our pages: show them, run our own scripts, nothing else; and that it
 * keeps no answer which does not say otherwise.
 */
final class SecurityHeaders {
  private static final String POLICY =
      "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
          + " frame-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self';"
          + " frame-ancestors 'self'";

  /** A year, as is usual: for so long a browser that was here once comes by HTTPS alone. */
  private static final String HTTPS_ALONE = "max-age=31536000";

  private final boolean https;

  /**
   * @param https whether browsers see us by HTTPS: whoever ends TLS stands before us
   */
  SecurityHeaders(boolean https) {
    this.https = https;
  }

  void add(RoutingContext context) {
    context.addHeadersEndHandler(
        end -> {
          MultiMap headers = context.response().headers();
          putAbsent(headers, "Content-Security-Policy", POLICY);
          putAbsent(headers, "X-Content-Type-Options", "nosniff");
          putAbsent(headers, "Referrer-Policy", "same-origin");
          putAbsent(headers, "Cache-Control", "no-store");
          if (https) {
            putAbsent(headers, "Strict-Transport-Security", HTTPS_ALONE);
          }
        });
    context.next();
  }

  private static void putAbsent(MultiMap headers, String name, String value) {
    if (!headers.contains(name)) {
      headers.set(name, value);
    }
  }
}
