package org.tapeline.journal.quarkus.http;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Says to who announces too large a body how much is taken, before a byte of it is read. */
@ApplicationScoped
public class BodyLimit {
  /** Before the server's own limit, which closes the connection without a word. */
  private static final int FIRST = 1_000;

  private static final long MEGABYTE = 1_048_576;

  private final long most;

  BodyLimit(@ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize most) {
    this.most = most.asLongValue();
  }

  void listen(@Observes Filters filters) {
    filters.register(this::check, FIRST);
  }

  private void check(RoutingContext context) {
    if (announced(context) <= most) {
      context.next();
      return;
    }
    context.response().putHeader(HttpHeaders.CONNECTION, "close");
    RawRefusal.send(
        context,
        new Problem(
            413,
            "too-large",
            "Too large",
            "At most " + most / MEGABYTE + " MB are taken at once. Send it in parts.",
            List.of()));
  }

  /** What is no number the server itself refuses. */
  private static long announced(RoutingContext context) {
    String length = context.request().getHeader(HttpHeaders.CONTENT_LENGTH);
    boolean number = length != null && length.matches("[0-9]{1,18}");
    return number ? Long.parseLong(length) : 0;
  }
}
