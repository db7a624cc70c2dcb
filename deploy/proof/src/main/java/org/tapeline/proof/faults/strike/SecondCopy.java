package org.tapeline.proof.faults.strike;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.Random;
import org.tapeline.proof.faults.process.FragileStack;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Gate;
import org.tapeline.servers.Ports;

/**
 * A service runs twice for a while: two consumers in one group, two relays of which one leads, and
 * commands at both. One of the two is killed at some moment.
 */
final class SecondCopy {
  private static final Duration UP = Duration.ofSeconds(60);
  private static final int TOGETHER_MILLIS = 6_000;
  private static final int MORE_MILLIS = 6_000;

  private SecondCopy() {}

  static void of(Part service, FragileStack stack, Gate gate, Random random) {
    int port = freePort();
    Process copy = stack.copyOf(service, port);
    try {
      awaitUp(stack.place(), service, port, copy);
      gate.alsoAt(service, port);
      StackPlace.rest(Duration.ofMillis(TOGETHER_MILLIS + random.nextInt(MORE_MILLIS)));
      if (random.nextBoolean()) {
        // The copy leads and consumes alone until the first is there again.
        Kills.kill(stack, service, random);
      }
    } finally {
      gate.onlyThroughGateway(service);
      if (random.nextBoolean()) {
        copy.destroyForcibly();
      } else {
        copy.destroy();
      }
    }
    stack.revive(service);
  }

  private static void awaitUp(StackPlace place, Part service, int port, Process copy) {
    Instant until = Instant.now().plus(UP);
    while (copy.isAlive() && Instant.now().isBefore(until) && !place.healthy(service, port)) {
      StackPlace.rest(Duration.ofMillis(250));
    }
  }

  private static int freePort() {
    try {
      return Ports.free();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
