package org.tapeline.proof.faults.strike;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.tapeline.proof.faults.process.FragileStack;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;

/** Processes that end at once, with no time to finish anything, and are started again. */
final class Kills {
  private static final Duration LONGEST_STALL = Duration.ofSeconds(8);
  private static final int SOME_ROWS = 15;
  private static final int LONGEST_DOWN_MILLIS = 3000;

  private Kills() {}

  static void kill(FragileStack stack, Part part, Random random) {
    stack.kill(part);
    StackPlace.rest(Duration.ofMillis(random.nextInt(LONGEST_DOWN_MILLIS)));
    stack.revive(part);
  }

  /**
   * The broker hangs until some relay has a heap of rows to send. That relay's service is killed
   * either while the broker has what was sent and has not answered, or just after it goes on.
   *
   * @return the service that was killed
   */
  static Part relay(FragileStack stack, Random random) {
    List<ProcessHandle> broker = stack.pause(Part.BROKER);
    Part sending;
    try {
      sending = awaitHeap(stack.place(), random);
      if (random.nextBoolean()) {
        stack.kill(sending);
      }
    } finally {
      stack.goOn(broker);
    }
    StackPlace.rest(Duration.ofMillis(random.nextInt(40)));
    kill(stack, sending, random);
    return sending;
  }

  private static Part awaitHeap(StackPlace place, Random random) {
    Instant until = Instant.now().plus(LONGEST_STALL);
    while (Instant.now().isBefore(until)) {
      for (Part service : Part.SERVICES) {
        if (unsent(place, service).filter(rows -> rows >= SOME_ROWS).isPresent()) {
          return service;
        }
      }
      StackPlace.rest(Duration.ofMillis(50));
    }
    return Part.SERVICES.get(random.nextInt(Part.SERVICES.size()));
  }

  private static Optional<Long> unsent(StackPlace place, Part service) {
    try (Connection connection = place.database(service);
        Statement select = connection.createStatement();
        ResultSet row = select.executeQuery("select count(*) from journal_unsent")) {
      row.next();
      return Optional.of(row.getLong(1));
    } catch (SQLException e) {
      return Optional.empty();
    }
  }
}
