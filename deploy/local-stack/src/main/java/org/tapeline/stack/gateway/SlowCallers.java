package org.tapeline.stack.gateway;

import io.vertx.core.Vertx;
import io.vertx.core.http.HttpConnection;
import io.vertx.ext.web.RoutingContext;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Ends connections whose caller takes too long to say what it wants, however often a byte of it
 * comes: a thousand such callers would hold a thousand connections for ever.
 */
final class SlowCallers {
  private final Vertx vertx;
  private final Limits limits;
  private final Map<HttpConnection, Long> timers = new ConcurrentHashMap<>();

  /**
   * How long things may take.
   *
   * @param firstHead from the connection to the end of the first request's head
   * @param nextHead from an answer to the end of the next request's head
   * @param body from the head of a request to its last byte: some megabytes over a poor connection
   */
  record Limits(Duration firstHead, Duration nextHead, Duration body) {
    static final Limits USUAL =
        new Limits(Duration.ofSeconds(15), Duration.ofSeconds(120), Duration.ofMinutes(4));
  }

  SlowCallers(Vertx vertx, Limits limits) {
    this.vertx = vertx;
    this.limits = limits;
  }

  void connected(HttpConnection connection) {
    connection.closeHandler(closed -> stop(connection));
    within(connection, limits.firstHead());
  }

  /** A request's head has come; its body must follow, and then the next request. */
  void asked(RoutingContext context) {
    HttpConnection connection = context.request().connection();
    within(connection, limits.body());
    context.request().end().onComplete(came -> stop(connection));
    context.addEndHandler(answered -> within(connection, limits.nextHead()));
    context.next();
  }

  private void within(HttpConnection connection, Duration time) {
    stop(connection);
    timers.put(connection, vertx.setTimer(time.toMillis(), late -> connection.close()));
  }

  private void stop(HttpConnection connection) {
    Long timer = timers.remove(connection);
    if (timer != null) {
      vertx.cancelTimer(timer);
    }
  }
}
