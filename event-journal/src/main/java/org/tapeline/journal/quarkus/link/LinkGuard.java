package org.tapeline.journal.quarkus.link;

import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerRequestFilter;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ContainerResponseFilter;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.ext.Provider;
import java.time.Duration;
import java.util.Optional;

/** Stands before every {@link LinkPage}. */
@Provider
@LinkPage
public class LinkGuard implements ContainerRequestFilter, ContainerResponseFilter {
  /** No script at all; our own style sheet and icon; forms go back to us. */
  private static final String POLICY =
      "default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none';"
          + " frame-ancestors 'none'";

  private final VisitLimits limits;
  private final CurrentVertxRequest current;

  LinkGuard(VisitLimits limits, CurrentVertxRequest current) {
    this.limits = limits;
    this.current = current;
  }

  /**
   * The address is the one that the gateway tells: who else may tell one is for {@code
   * quarkus.http.proxy.trusted-proxies}.
   */
  @Override
  public void filter(ContainerRequestContext request) {
    String address = current.getCurrent().request().remoteAddress().hostAddress();
    String token = request.getUriInfo().getPathParameters().getFirst("token");
    Duration wait = limits.visit(address, Optional.ofNullable(token));
    if (wait.isPositive()) {
      request.abortWith(LinkPages.busy(1 + wait.toSeconds()));
    } else if (request.getUriInfo().getRequestUri().getRawPath().contains("%")) {
      // Nothing in a link of ours is ever written with percent signs.
      request.abortWith(LinkPages.dead());
    }
  }

  @Override
  public void filter(ContainerRequestContext request, ContainerResponseContext response) {
    MultivaluedMap<String, Object> headers = response.getHeaders();
    headers.putSingle(HttpHeaders.CACHE_CONTROL, "no-store");
    headers.putSingle("Referrer-Policy", "no-referrer");
    headers.putSingle("X-Robots-Tag", "noindex, nofollow");
    headers.putSingle("X-Content-Type-Options", "nosniff");
    headers.putSingle("Content-Security-Policy", POLICY);
  }
}
