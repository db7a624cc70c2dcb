package org.tapeline.notify.whole;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
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
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@QuarkusTestResource(SmtpServer.class)
@Tag("servers")
@Tag("containers")
@DisplayName("Notify's read models, rebuilt while it serves")
class RebuildTest {
  private static final String SATURDAY = "2035-09-15T15:00:00Z";
  private static final Duration SOON = Duration.ofSeconds(30);

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Rebuild rebuild;
  @Inject Instance<ReadModel> models;
  @Inject Kept kept;
  @Inject Transactions transactions;

  private final String rosa = "rosa." + UUID.randomUUID() + "@families.example.org";
  private Peers peers;

  @BeforeEach
  void putRightWhatOtherTestsLeft() {
    peers = new Peers(kafka);
    run();
  }

  @AfterEach
  void close() {
    peers.close();
  }

  private List<TableResult> run() {
    return rebuild.run(models.stream().toList(), false, (done, total) -> {});
  }

  private static List<TableResult> differing(List<TableResult> results) {
    return results.stream().filter(result -> result.differing() > 0).toList();
  }

  private void publish(Event event) {
    peers.send(event, UuidV7.next());
  }

  private void execute(String sql) {
    transactions.required(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(sql);
          }
        });
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

  private void wishes(Family family) {
    String contact = "/contacts/" + family.guardianId(0);
    await()
        .atMost(SOON)
        .until(
            () ->
                given().auth().preemptive().basic("manager", "larkfield").get(contact).statusCode()
                    == 200);
    given()
        .redirects()
        .follow(false)
        .auth()
        .preemptive()
        .basic("manager", "larkfield")
        .formParam("commandId", UuidV7.next().toString())
        .formParam("first", "")
        .formParam("from", "21:00")
        .formParam("to", "07:00")
        .formParam("zone", "America/Chicago")
        .post(contact)
        .then()
        .statusCode(303);
  }

  @Test
  @DisplayName("are equal to those that grew; a notice that was forged is put right, none is sent")
  void equalAndPutRight() {
    Family family = new Family("Mia").guardian("en", rosa);
    family.details().forEach(this::publish);
    wishes(family);
    Refit refit = new Refit(family.player);
    publish(refit.opened(1));
    publish(refit.booked(2, SATURDAY));
    String sent =
        "select count(*) from notice where refit_case = '" + refit.id + "' and state = 'sent'";
    await().atMost(SOON).until(() -> number(sent) == 1);
    assertThat(differing(run())).isEmpty();

    long events = number("select count(*) from journal");
    int mails = SmtpServer.to(rosa).size();
    execute("update notice set state = 'cancelled' where refit_case = '" + refit.id + "'");
    execute("update guardian set email = 'x@example.org' where email = '" + rosa + "'");
    execute("delete from wish where recipient = '" + family.guardianId(0) + "'");
    assertThat(differing(run()))
        .flatExtracting(TableResult::examples)
        .contains("changed " + family.guardianId(0) + " (email)", "missing " + family.guardianId(0))
        .anyMatch(example -> example.endsWith(" (state)"));
    assertThat(number(sent)).isEqualTo(1);
    assertThat(number("select count(*) from guardian where email = '" + rosa + "'")).isEqualTo(1);
    assertThat(differing(run())).isEmpty();
    assertThat(number("select count(*) from journal")).isEqualTo(events);
    assertThat(SmtpServer.to(rosa)).hasSize(mails);
  }

  @Test
  @DisplayName("bring no copy back of a family that is gone")
  void goneFamily() {
    Family family = new Family("Leo").guardian("en", rosa);
    family.details().forEach(this::publish);
    await()
        .atMost(SOON)
        .until(() -> number("select count(*) from guardian where email = '" + rosa + "'") == 1);
    publish(
        Event.of(
            "sizing.events",
            "org.tapeline.sizing.player-left.v1",
            "player-" + family.player,
            1,
            family.player,
            Map.of("player", family.player)));
    String left = " from player_left where player = '" + family.player + "'";
    await().atMost(SOON).until(() -> number("select count(*)" + left) == 1);
    assertThat(differing(run())).isEmpty();
    execute("delete from player where player = '" + family.player + "'");
    execute("delete from guardian where guardian = '" + family.guardianId(0) + "'");
    execute("delete" + left);
    assertThat(differing(run())).isEmpty();
    assertThat(number("select count(*) from guardian where email = '" + rosa + "'")).isZero();
  }

  @Test
  @DisplayName("and what is kept account for every table of the service, each once")
  void everyTable() {
    List<ReadModel> all = models.stream().toList();
    List<String> faults = transactions.required(c -> TableClasses.faults(c, all, kept));
    assertThat(faults).isEmpty();
  }
}
