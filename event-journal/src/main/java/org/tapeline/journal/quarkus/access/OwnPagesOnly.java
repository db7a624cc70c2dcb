package org.tapeline.journal.quarkus.access;

import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerRequestFilter;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.ext.Provider;
import java.util.List;
import java.util.Set;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * Nothing is changed in the name of somebody who is signed in because a page of somebody else made
 * the browser send it. The cookie's {@code SameSite=Strict} keeps most of that off; this also keeps
 * off neighbours under the same domain, and passwords that the browser remembers. What needs no
 * sign-in gains nothing from it, and its pages hide where their forms come from.
 */
@Provider
public class OwnPagesOnly implements ContainerRequestFilter {
  private static final Set<String> CHANGING_NOTHING = Set.of("GET", "HEAD", "OPTIONS");

  @Context ResourceInfo asked;

  /**
   * @throws Problem 403 for a change that another's page asks for
   */
  @Override
  public void filter(ContainerRequestContext request) {
    if (CHANGING_NOTHING.contains(request.getMethod()) || needsNoSignIn()) {
      return;
    }
    Sender sender =
        new Sender(
            request.getHeaderString("Sec-Fetch-Site"),
            request.getHeaderString("Origin"),
            request.getUriInfo().getBaseUri().getAuthority());
    if (sender.isForeign()) {
      throw new Problem(
          403,
          "foreign-page",
          "Not from here",
          "A page that is not Tapeline's sent this, so nothing was done. Open the page in Tapeline"
              + " and send it from there.",
          List.of());
    }
  }

  private boolean needsNoSignIn() {
    return asked.getResourceMethod().isAnnotationPresent(PermitAll.class)
        || asked.getResourceClass().isAnnotationPresent(PermitAll.class);
  }
}
