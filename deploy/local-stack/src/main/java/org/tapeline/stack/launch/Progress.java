package org.tapeline.stack.launch;

import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/** One line for each part: what it is and, once it is up, how long that took. */
final class Progress {
  private final PrintStream out;
  private final Map<String, Instant> started = new LinkedHashMap<>();

  Progress(PrintStream out) {
    this.out = out;
  }

  synchronized void starting(String part, String what) {
    started.put(part, Instant.now());
    out.printf("  ..  %-12s %s%n", part, what);
  }

  synchronized void ready(String part, String where) {
    Duration took = Duration.between(started.getOrDefault(part, Instant.now()), Instant.now());
    out.printf("  ok  %-12s %s (%.1f s)%n", part, where, took.toMillis() / 1000.0);
  }

  synchronized void failed(String part, String why) {
    out.printf("  !!  %-12s %s%n", part, why);
  }

  synchronized void say(String line) {
    out.println(line);
  }
}
