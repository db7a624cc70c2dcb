package org.tapeline.stack.demo;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;

/** What one service knows another hears a moment later: asks again until it has. */
final class DemoRetry {
  private static final Duration PATIENCE = Duration.ofSeconds(30);
  private static final long BETWEEN_MILLIS = 200;

  /** A request that may come too early. */
  interface Request {
    JsonNode send() throws IOException;
  }

  JsonNode untilKnown(Request request) throws IOException {
    Instant until = Instant.now().plus(PATIENCE);
    while (true) {
      try {
        return request.send();
      } catch (DemoHttp.Refused refused) {
        if (refused.status() >= 500 || refused.status() < 400 || Instant.now().isAfter(until)) {
          throw refused;
        }
        rest();
      }
    }
  }

  private static void rest() throws IOException {
    try {
      Thread.sleep(BETWEEN_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
  }
}
