package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.sizing.whole.Association.CHARTS;
import static org.tapeline.sizing.whole.Association.as;
import static org.tapeline.sizing.whole.Association.commandOf;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.rebuild.Kept;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.Rebuild;
import org.tapeline.journal.rebuild.TableClasses;
import org.tapeline.journal.rebuild.TableResult;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Sizing's read models, rebuilt while it serves")
class RebuildTest {
  private static final Duration SOON = Duration.ofSeconds(20);
  private static final EventContracts CONTRACTS = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Rebuild rebuild;
  @Inject Instance<ReadModel> models;
  @Inject Kept kept;
  @Inject Transactions transactions;

  @BeforeEach
  void putRightWhatOtherTestsLeft() {
    importing("charts", "all-or-none", CHARTS).statusCode(200);
    run();
  }

  private List<TableResult> run() {
    return rebuild.run(models.stream().toList(), false, (done, total) -> {});
  }

  private static List<TableResult> differing(List<TableResult> results) {
    return results.stream().filter(result -> result.differing() > 0).toList();
  }

  private static Envelope said(
      String service, String event, String stream, UUID key, ObjectNode d) {
    String type = "org.tapeline." + service + "." + event + ".v1";
    UUID id = UuidV7.next();
    return new Envelope(service + ".events", type, stream, 1, key.toString(), id, id, id, d);
  }

  private void peersTell(UUID player) {
    UUID session = UuidV7.next();
    ObjectNode passed = CONTRACTS.exampleOf("org.tapeline.fitting.fit-passed.v1").deepCopy();
    passed.put("player", player.toString()).put("session", session.toString());
    String tag = "LV" + session.toString().substring(28).toUpperCase(Locale.ROOT);
    ObjectNode received =
        CONTRACTS.exampleOf("org.tapeline.inventory.helmet-received.v1").deepCopy();
    received.put("tag", tag);
    try (TestKafka peer = new TestKafka(kafka)) {
      peer.publish(said("fitting", "fit-passed", "session-" + session, player, passed));
      peer.publish(said("inventory", "helmet-received", "helmet-" + tag, session, received));
    }
    await()
        .atMost(SOON)
        .until(() -> number("select count(*) from usable_helmet where tag = '" + tag + "'") == 1);
    await()
        .atMost(SOON)
        .until(
            () -> number("select count(*) from passed_size where player = '" + player + "'") == 1);
  }

  private long number(String sql) {
    return transactions.required(
        connection -> {
          try (Statement statement = connection.createStatement();
              ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return row.getLong(1);
          }
        });
  }

  private void execute(String sql) {
    transactions.required(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
          }
        });
  }

  @Test
  @DisplayName("are equal to those that grew; a head and a name that were forged are put right")
  void equalAndPutRight() {
    String number = enrolledAt("NORTH");
    UUID player = idOf(number);
    measure("fitter.north", number, "534", "535").statusCode(200);
    measure("fitter.north", number, "536", "537").statusCode(200);
    String corrected = enrolledAt("NORTH");
    measure("fitter.north", corrected, "574", "575").statusCode(200);
    commandOf("fitter.north")
        .contentType("application/json")
        .body("{\"version\":2,\"readings\":[\"534\",\"535\"],\"why\":\"misread\"}")
        .post("/api/players/" + corrected + "/corrections")
        .then()
        .statusCode(200);
    String erased = enrolledAt("NORTH");
    measure("fitter.north", erased, "534", "535").statusCode(200);
    commandOf("manager").delete("/api/players/" + erased).then().statusCode(204);
    peersTell(player);
    List<TableResult> results = run();
    assertThat(differing(results)).isEmpty();
    assertThat(results.stream().filter(result -> result.rows() == 0)).isEmpty();

    execute("update head set value_mm = 600 where player = '" + player + "' and version = 2");
    execute("delete from guardianship where player = '" + player + "'");
    execute("update player set family_name = 'Forged' where player = '" + player + "'");
    assertThat(differing(run()))
        .flatExtracting(TableResult::examples)
        .contains("changed " + player + ", 2 (value_mm)", "changed " + player + " (family_name)")
        .anyMatch(example -> example.startsWith("missing " + player));
    as("manager").get("/api/players/" + number).then().statusCode(200);
    assertThat(differing(run())).isEmpty();
  }

  @Test
  @DisplayName("and what is kept account for every table of the service, each once")
  void everyTable() {
    List<ReadModel> all = models.stream().toList();
    List<String> faults = transactions.required(c -> TableClasses.faults(c, all, kept));
    assertThat(faults).isEmpty();
  }
}
