package org.tapeline.journal.quarkus.access;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ContainerResponseFilter;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.ext.Provider;

/** No answer is kept by a browser: an old page that says "may wear" would be a wrong one. */
@Provider
public class NothingIsKept implements ContainerResponseFilter {
  @Override
  public void filter(ContainerRequestContext request, ContainerResponseContext response) {
    response.getHeaders().putSingle(HttpHeaders.CACHE_CONTROL, "no-store");
  }
}
