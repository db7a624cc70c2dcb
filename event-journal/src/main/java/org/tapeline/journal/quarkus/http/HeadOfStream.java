package org.tapeline.journal.quarkus.http;

import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerRequestFilter;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.ext.Provider;
import java.util.Set;

/**
 * Who asks for the head of a stream of events gets that and no stream. Otherwise the stream would
 * begin unseen: for the caller the answer has ended with its head, so the caller asks the next
 * thing on the same connection, which is not heard before the stream ends.
 */
@Provider
public class HeadOfStream implements ContainerRequestFilter {
  @Context ResourceInfo asked;

  @Override
  public void filter(ContainerRequestContext request) {
    if (request.getMethod().equals(HttpMethod.HEAD) && streams()) {
      request.abortWith(Response.ok().type(MediaType.SERVER_SENT_EVENTS_TYPE).build());
    }
  }

  private boolean streams() {
    Produces produces = asked.getResourceMethod().getAnnotation(Produces.class);
    return produces != null && Set.of(produces.value()).contains(MediaType.SERVER_SENT_EVENTS);
  }
}
