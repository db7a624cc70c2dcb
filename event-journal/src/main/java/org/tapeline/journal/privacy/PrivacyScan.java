package org.tapeline.journal.privacy;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.kafka.KafkaClients;
import org.tapeline.journal.kafka.Topics;

/**
 * Takes the names, addresses, telephone numbers and days of birth of everybody on the roster and
 * looks for them in every table, every topic and every line of the logs; only the topic {@code
 * people} and the tables that are declared to hold copies of it may have them. With the words of
 * people who were erased, looks for these in the declared tables too.
 */
public final class PrivacyScan {
  private final Map<String, Connection> databases = new TreeMap<>();
  private final Findings findings = new Findings();
  private final Set<String> mayTell;

  private PrivacyScan(Set<String> mayTell) {
    this.mayTell = mayTell;
  }

  /**
   * Arguments: Kafka ({@code host:port}), the folder of the logs or {@code none}, the file of the
   * tables that may tell, a file with the words of erased people or {@code none}, then for each
   * service its name and JDBC address. User and password come from {@code TAPELINE_DB_USER} and
   * {@code TAPELINE_DB_PASSWORD}. Ends with 1 when something stands where it may not.
   */
  public static void main(String[] args) throws IOException, SQLException {
    if (args.length < 6 || args.length % 2 != 0) {
      System.err.println(
          "Usage: privacy-scan KAFKA LOGS|none TABLES ERASED|none SERVICE JDBC-URL ...");
      System.exit(2);
    }
    PrivacyScan scan = new PrivacyScan(lines(Path.of(args[2])).collect(Collectors.toSet()));
    for (int i = 4; i < args.length; i += 2) {
      scan.databases.put(args[i], connect(args[i + 1]));
    }
    boolean erased = !args[3].equals("none");
    PersonalWords words = erased ? written(Path.of(args[3])) : scan.roster();
    scan.run(words, erased, new TopicScan(new KafkaClients(args[0], Map.of())), args[1]);
    System.exit(scan.findings.count() == 0 ? 0 : 1);
  }

  private static Connection connect(String url) throws SQLException {
    String user = System.getenv().getOrDefault("TAPELINE_DB_USER", "tapeline");
    String password = System.getenv().getOrDefault("TAPELINE_DB_PASSWORD", "tapeline");
    return DriverManager.getConnection(url, user, password);
  }

  private static Stream<String> lines(Path file) throws IOException {
    return Files.readAllLines(file).stream()
        .map(line -> line.replaceFirst("#.*", "").strip())
        .filter(line -> !line.isEmpty());
  }

  private static PersonalWords written(Path file) throws IOException {
    PersonalWords words = new PersonalWords();
    lines(file).forEach(words::addText);
    return words;
  }

  /** Everybody whom sizing, which owns the topic, has told of. */
  private PersonalWords roster() throws SQLException {
    PersonalWords words = new PersonalWords();
    String select = "select data from current_state where topic = ? and data is not null";
    try (PreparedStatement statement = databases.get("sizing").prepareStatement(select)) {
      statement.setString(1, Topics.PEOPLE);
      try (ResultSet rows = statement.executeQuery()) {
        while (rows.next()) {
          words.addPerson(EventJson.MAPPER.readTree(rows.getString(1)));
        }
      }
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("What stands on the topic people is JSON", e);
    }
    return words;
  }

  private void run(PersonalWords words, boolean erased, TopicScan kafka, String logs)
      throws IOException, SQLException {
    if (words.size() == 0) {
      throw new IOException("There is nobody to look for: the roster is empty.");
    }
    System.out.printf("%-28s %12s %8s%n", "looked at", "rows", "found");
    Set<String> tables = new TreeSet<>();
    for (Map.Entry<String, Connection> each : databases.entrySet()) {
      TableScan scan = new TableScan(each.getValue(), each.getKey());
      tables.addAll(scan.tables());
      long before = findings.count();
      long rows = scan.run(erased ? Set.of() : mayTell, words, findings);
      print("tables of " + each.getKey(), rows, before);
    }
    for (String topic : kafka.topics()) {
      if (!topic.equals(Topics.PEOPLE)) {
        long before = findings.count();
        print("topic " + topic, kafka.run(topic, words, findings), before);
      }
    }
    if (!logs.equals("none")) {
      long before = findings.count();
      print("log lines", LogScan.run(Path.of(logs), words, findings), before);
    }
    findings.at("declared, but there is no such table", without(mayTell, tables));
    findings.places().forEach(System.out::println);
    System.out.printf(
        "%d words of people looked for, %d found where they may not stand%n",
        words.size(), findings.count());
  }

  private static List<String> without(Set<String> declared, Set<String> tables) {
    List<String> missing = new ArrayList<>(declared);
    missing.removeAll(tables);
    return missing;
  }

  private void print(String what, long rows, long before) {
    System.out.printf("%-28s %12d %8d%n", what, rows, findings.count() - before);
  }
}
