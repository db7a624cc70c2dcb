package org.tapeline.journal.quarkus.log;

import io.quarkus.logging.LoggingFilter;
import java.util.Arrays;
import java.util.logging.Filter;
import java.util.logging.LogRecord;

/**
 * Shortens the addresses of requests that the HTTP server writes into the log when one fails: what
 * follows the first two steps may be the token of a link, or a name that was looked for.
 */
@LoggingFilter(name = "no-addresses")
public final class NoAddresses implements Filter {
  private static final String SERVER = "io.quarkus.vertx.http";

  @Override
  public boolean isLoggable(LogRecord line) {
    if (line.getLoggerName() != null
        && line.getLoggerName().startsWith(SERVER)
        && line.getParameters() != null) {
      line.setParameters(Arrays.stream(line.getParameters()).map(NoAddresses::shorter).toArray());
    }
    return true;
  }

  private static Object shorter(Object parameter) {
    return parameter instanceof String text && text.startsWith("/")
        ? text.replaceFirst("^(/[^/?]*/[^/?]*)[/?].*", "$1/...")
        : parameter;
  }
}
