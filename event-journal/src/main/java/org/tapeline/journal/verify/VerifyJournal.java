package org.tapeline.journal.verify;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.tapeline.journal.kafka.KafkaClients;
import org.tapeline.journal.kafka.Topics;

/**
 * Proves that nothing in a journal was altered or removed: every stream's hash chain is recomputed,
 * and every event that ever reached Kafka must stand in the journal with the same hash, which also
 * shows when the end of a stream was cut off.
 */
public final class VerifyJournal {
  private VerifyJournal() {}

  /**
   * Arguments: the servers of Kafka ({@code host:port} or {@code none}), then for each service its
   * name and JDBC address. User and password come from {@code TAPELINE_DB_USER} and {@code
   * TAPELINE_DB_PASSWORD}. Ends with 1 when something does not hold.
   */
  public static void main(String[] args) throws SQLException {
    if (args.length < 3 || args.length % 2 == 0) {
      System.err.println(
          "Usage: verify-journal KAFKA|none SERVICE JDBC-URL [SERVICE JDBC-URL ...]");
      System.exit(2);
    }
    boolean sound = true;
    for (int i = 1; i < args.length; i += 2) {
      sound &= verify(args[0], args[i], args[i + 1]);
    }
    System.exit(sound ? 0 : 1);
  }

  private static boolean verify(String kafka, String service, String url) throws SQLException {
    String user = System.getenv().getOrDefault("TAPELINE_DB_USER", "tapeline");
    String password = System.getenv().getOrDefault("TAPELINE_DB_PASSWORD", "tapeline");
    try (Connection connection = DriverManager.getConnection(url, user, password)) {
      ChainCheck.Report chains = ChainCheck.run(connection);
      System.out.printf(
          "%s: %d events in %d streams, %d faults%n",
          service, chains.events(), chains.streams(), chains.faults().size());
      print(chains.faults());
      if (kafka.equals("none")) {
        return chains.faults().isEmpty();
      }
      KafkaClients clients = new KafkaClients(kafka, Map.of());
      TopicCheck.Report topic = TopicCheck.run(connection, clients, Topics.of(service));
      System.out.printf(
          "%s: %d records of %s stand in the journal, %d do not%n",
          service, topic.matching(), Topics.of(service), topic.faults().size());
      print(topic.faults());
      return chains.faults().isEmpty() && topic.faults().isEmpty();
    }
  }

  private static void print(List<String> faults) {
    faults.forEach(fault -> System.out.println("  " + fault));
  }
}
