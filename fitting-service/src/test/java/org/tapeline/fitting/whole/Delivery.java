package org.tapeline.fitting.whole;

import static org.awaitility.Awaitility.await;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Envelope;

/**
 * Delivers events one after the other, so that the order across topics is the one that is meant.
 */
final class Delivery {
  private final Peers peers;
  private final Transactions transactions;

  Delivery(Peers peers, Transactions transactions) {
    this.peers = peers;
    this.transactions = transactions;
  }

  /** A random order in which each stream keeps its own. */
  static List<Envelope> interleaved(List<List<Envelope>> streams, Random random) {
    List<Deque<Envelope>> left = new ArrayList<>();
    streams.forEach(stream -> left.add(new ArrayDeque<>(stream)));
    List<Envelope> order = new ArrayList<>();
    while (!left.isEmpty()) {
      Deque<Envelope> stream = left.get(random.nextInt(left.size()));
      order.add(stream.pop());
      left.removeIf(Deque::isEmpty);
    }
    return order;
  }

  /** Each event, now and then followed by one that was delivered before. */
  void withRepeats(List<Envelope> order, Random random) {
    for (int i = 0; i < order.size(); i++) {
      inOrder(order.get(i));
      if (random.nextInt(3) == 0) {
        peers.send(order.get(random.nextInt(i + 1)));
      }
    }
    everythingIsRead();
  }

  void inOrder(Envelope... events) {
    for (Envelope event : events) {
      peers.send(event);
      await()
          .atMost(Fitter.PATIENCE)
          .pollInterval(Duration.ofMillis(10))
          .until(() -> applied(event) >= event.version());
    }
  }

  /** All of them, each of another story; waits until the last one is applied. */
  void allOf(List<Envelope> round) {
    round.forEach(peers::send);
    List<Envelope> waiting = new ArrayList<>(round);
    await()
        .atMost(Duration.ofSeconds(60))
        .pollInterval(Duration.ofMillis(20))
        .until(
            () -> {
              waiting.removeIf(event -> applied(event) >= event.version());
              return waiting.isEmpty();
            });
  }

  private long applied(Envelope event) {
    return transactions.required(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "select version from inbox_position where topic = ? and stream = ?")) {
            select.setString(1, event.topic());
            select.setString(2, event.stream());
            try (ResultSet row = select.executeQuery()) {
              return row.next() ? row.getLong(1) : 0L;
            }
          }
        });
  }

  /** Repeats too: the service says itself up to when it has read everything. */
  private static void everythingIsRead() {
    Instant sent = Instant.now();
    await()
        .atMost(Fitter.PATIENCE)
        .until(
            () -> {
              String asOf = Fitter.as("manager").get("/api/sideline").jsonPath().getString("asOf");
              return asOf != null && Instant.parse(asOf).isAfter(sent);
            });
  }
}
