package org.tapeline.proof.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.proof.faults.compare.Findings;
import org.tapeline.proof.faults.compare.Findings.Finding;
import org.tapeline.proof.faults.compare.Findings.Sort;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Command;
import org.tapeline.proof.faults.season.Ledger.Entry;
import org.tapeline.proof.faults.season.Ledger.Outcome;
import org.tapeline.proof.faults.strike.Kind;
import org.tapeline.stack.launch.Ports;

@DisplayName("A season in which each service, the broker and the database are killed")
class SeasonWithFaultsTest {
  private static final Options EACH_KILLED_ONCE =
      new Options(Duration.ZERO, System.nanoTime() % 1_000_000, List.of(Kind.KILL_SERVICE));

  private static final int SHOWN = 5;

  private static Trial trial;
  private static Findings findings;

  @BeforeAll
  static void play() throws IOException, SQLException {
    Path root = Path.of(System.getProperty("tapeline.root"));
    Path data = root.resolve("deploy/proof/target/season-with-faults");
    trial = Trial.on(new StackPlace(root, data, freePorts()), System.out::println);
    Runtime.getRuntime().addShutdownHook(new Thread(trial::close));
    trial.run(EACH_KILLED_ONCE);
    findings = trial.compare();
  }

  @AfterAll
  static void stop() {
    trial.close();
  }

  @Test
  @DisplayName("loses nothing that was accepted, does nothing twice and ends where it must")
  void nothingLost() {
    assertThat(findings.all()).as(evidence()).isEmpty();
    assertThat(findings.looked()).containsKeys("accepted commands", "mails", "re-fit cases");
    assertThat(trial.strikes().counts())
        .containsOnlyKeys(
            "kill-service sizing",
            "kill-service fitting",
            "kill-service inventory",
            "kill-service notify",
            "kill-broker kafka",
            "kill-database postgres");
  }

  /** In one line, since the summary of a build shows no more of what failed. */
  private static String evidence() {
    return "seed %d; found: %s"
        .formatted(
            EACH_KILLED_ONCE.seed(),
            findings.all().stream()
                .limit(SHOWN)
                .map(Finding::toString)
                .collect(Collectors.joining("; ")));
  }

  @Test
  @DisplayName("would show a command that was lost, and rows and mails that somebody changed")
  void comparisonCanFail() throws IOException, SQLException {
    Command never =
        new Command(
            UUID.randomUUID(),
            "reading",
            Part.SIZING,
            Optional.of("manager"),
            "/sizing/api/players/LV-0001/readings",
            "application/json",
            "{}",
            "LV-0001",
            Map.of("head-measured", 1),
            Map.of());
    trial.ledger().enter(new Entry(never, Outcome.ACCEPTED, 200, "", 1, Instant.now()));
    change(
        Part.FITTING,
        "update sign_off set state = 'lapsed' where player ="
            + " (select min(player::text)::uuid from sign_off where state = 'signed-off')");
    change(Part.INVENTORY, "update helmet set place = 'DEPOT' where tag = 'LV260007Q'");
    change(Part.INVENTORY, "update helmet set place = 'RIVER' where tag = 'LV2600011'");
    change(
        Part.SIZING,
        "alter table journal disable trigger journal_is_written_once",
        "update journal set data = '{\"forged\":true}' where position = 1",
        "alter table journal enable trigger journal_is_written_once");
    change(Part.NOTIFY, "update inbox_position set version = version + 1 where version > 1");
    for (Path mail : mails()) {
      Files.delete(mail);
    }
    List<Finding> shown = trial.compare().all();
    assertThat(shown)
        .anySatisfy(f -> is(f, Sort.LOST, "commands", never.id().toString()))
        .anySatisfy(f -> is(f, Sort.DIFFERING, "sign-offs", "is lapsed"))
        .anySatisfy(f -> is(f, Sort.DIFFERING, "helmets", "in the table of inventory"))
        .anySatisfy(f -> is(f, Sort.DIFFERING, "hash chains", "is not what was written"))
        .anySatisfy(f -> is(f, Sort.LOST, "consumers", "notify has applied"))
        .anySatisfy(f -> is(f, Sort.LOST, "notices", "no mail came"));
  }

  private static void is(Finding finding, Sort sort, String check, String evidence) {
    assertThat(finding.sort()).isEqualTo(sort);
    assertThat(finding.check()).isEqualTo(check);
    assertThat(finding.evidence()).contains(evidence);
  }

  private static void change(Part service, String... statements) throws SQLException {
    try (Connection connection = trial.place().database(service);
        Statement change = connection.createStatement()) {
      for (String statement : statements) {
        change.execute(statement);
      }
    }
  }

  private static List<Path> mails() throws IOException {
    try (var files = Files.list(trial.place().data().resolve("mail"))) {
      return files.filter(f -> f.toString().endsWith(".eml")).toList();
    }
  }

  private static Ports freePorts() throws IOException {
    for (int port = 32_080; port <= Ports.LAST; port += 10) {
      if (Ports.from(port).taken().isEmpty()) {
        return Ports.from(port);
      }
    }
    throw new IOException("No ports are free");
  }
}
