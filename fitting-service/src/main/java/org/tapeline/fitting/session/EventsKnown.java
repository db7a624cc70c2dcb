package org.tapeline.fitting.session;

import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * How many events of the session the sender knew when this was entered. A phone sends late: what
 * was meant for one state must not be recorded on another.
 */
@RequestScoped
class EventsKnown {
  static final String HEADER = "Events-Known";

  private final RoutingContext request;

  EventsKnown(RoutingContext request) {
    this.request = request;
  }

  /**
   * @throws Problem when the sender said how many it knew, and there are others
   */
  void mustBe(int events) {
    String known = request.request().getHeader(HEADER);
    if (known != null && !known.equals(Integer.toString(events))) {
      throw Problem.conflict(
          "session-changed",
          "This session was gone on with elsewhere meanwhile. Look at the player's page; what was"
              + " entered here is not recorded.");
    }
  }
}
