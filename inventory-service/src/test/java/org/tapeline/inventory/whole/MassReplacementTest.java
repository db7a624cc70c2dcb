package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.allocation.PlanExpiry;
import org.tapeline.inventory.allocation.Plans;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Cause;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Helmets for many players at once")
class MassReplacementTest {
  private static final String SIZE = "youth-large";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject Plans plans;
  @Inject PlanExpiry expiry;
  @Inject Database database;

  private Fitting fitting;
  private Roster roster;
  private String field;
  private final String model = freshModel();

  @BeforeEach
  void start() {
    Depot.places();
    fitting = new Fitting(bootstrap);
    roster = new Roster(database);
    field = roster.freshField();
  }

  @AfterEach
  void stop() {
    fitting.close();
  }

  @Test
  @DisplayName("are given as is best for all, though their cases open one by one")
  void bestForAll() {
    String near = helmet(model, SIZE, "NORTH");
    String south = helmet(model, SIZE, "SOUTH");
    UUID north = roster.player("NORTH", model, SIZE);
    UUID river = roster.player("RIVER", model, SIZE);
    Cause cause = Cause.command(UUID.randomUUID());
    UUID plan = plans.replaceAll(Set.of(north, river), cause);
    assertThat(plans.replaceAll(Set.of(north, river), cause)).isEqualTo(plan);
    JsonNode committed = fitting.hears("plan-committed", "plan", plan);
    EventContracts.load().validateProduced("org.tapeline.inventory.plan-committed.v1", committed);
    assertThat(committed.path("kept").asInt()).isEqualTo(2);

    // Alone, the first to ask would get the helmet of its own field, and the other a far one.
    UUID first = fitting.opens(north, "NORTH", Fitting.helmet(model, SIZE));
    assertThat(reserved(first)).isEqualTo(south);
    UUID second = fitting.opens(river, "RIVER", Fitting.helmet(model, SIZE));
    assertThat(reserved(second)).isEqualTo(near);
  }

  @Test
  @DisplayName("are passed over by every other search, until the plan expires")
  void keptUntilItExpires() {
    String tag = helmet(model, SIZE, "NORTH");
    UUID plan = plans.replaceAll(Set.of(roster.player("NORTH", model, SIZE)), newCause());
    UUID other = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", other);

    expiry.look();
    assertThat(plannedIn(plan)).containsExactly(tag);
    database.change(
        "update plan set kept_until = now() - interval '1 minute' where plan = ?", plan);
    expiry.look();
    expiry.look();
    assertThat(reserved(other)).isEqualTo(tag);
    List<JsonNode> released = fitting.hears("plan-released", "plan", plan, 1);
    assertThat(released).hasSize(1);
    EventContracts.load()
        .validateProduced("org.tapeline.inventory.plan-released.v1", released.getFirst());
    assertThat(released.getFirst().path("helmets").asInt()).isEqualTo(1);
  }

  @Test
  @DisplayName("that went away since the plan was made are told, and the rest is kept, once")
  void goneMeanwhile() {
    String stays = helmet(model, SIZE, field);
    String goes = helmet(model, SIZE, field);
    roster.player(field, model, SIZE);
    roster.player(field, model, SIZE);
    String plan = draft("season", field);
    assertThat(plannedIn(UUID.fromString(plan))).isEmpty();
    damage("manager", goes, "shell", "crack").statusCode(200);
    as("manager").get("/api/plans/" + plan).then().body("changed", equalTo(true));

    UUID command = UUID.randomUUID();
    commit(plan, command).statusCode(200).body("kept", equalTo(1)).body("gone", equalTo(1));
    commit(plan, command).statusCode(200).body("kept", equalTo(1)).body("gone", equalTo(1));
    commit(plan, UUID.randomUUID()).statusCode(409).body("type", containsString("plan-committed"));
    assertThat(plannedIn(UUID.fromString(plan))).containsExactly(stays);
    as("manager")
        .get("/api/plans/" + plan)
        .then()
        .body("lines.find { it.tag == '" + goes + "' }.outcome", equalTo("helmet-gone"))
        .body("lines.find { it.tag == '" + stays + "' }.outcome", equalTo("kept"));
  }

  @Test
  @DisplayName("that are damaged later are planned for nobody, and the player gets another")
  void pulledLater() {
    String best = helmet(model, SIZE, field);
    UUID player = roster.player(field, model, SIZE);
    UUID plan = plans.replaceAll(Set.of(player), newCause());
    assertThat(plannedIn(plan)).containsExactly(best);
    damage("manager", best, "shell", "crack").statusCode(200);
    assertThat(plannedIn(plan)).isEmpty();
    String other = helmet(model, SIZE, "DEPOT");
    UUID refitCase = fitting.opens(player, field, Fitting.helmet(model, SIZE));
    assertThat(reserved(refitCase)).isEqualTo(other);
  }

  @Test
  @DisplayName("are free again for others once their players have been fitted in others")
  void fittedInAnother() {
    String planned = helmet(model, SIZE, "NORTH");
    String other = helmet(model, "youth-medium", "NORTH");
    UUID player = roster.player("NORTH", model, SIZE);
    plans.replaceAll(Set.of(player), newCause());
    UUID waits = fitting.opens(UUID.randomUUID(), "NORTH", Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", waits);
    fitting.signsOff(player, other, "NORTH");
    assertThat(reserved(waits)).isEqualTo(planned);
  }

  @Test
  @DisplayName("may be of the second size, and serve the case that asked for the first")
  void secondSize() {
    String medium = helmet(model, "youth-medium", field);
    UUID player = roster.player(field, model, SIZE);
    roster.advised(player, model, "youth-medium", 2);
    UUID refitCase = fitting.opens(player, field, Fitting.helmet(model, SIZE));
    fitting.hears("replacement-missing", "refitCase", refitCase);
    String plan = draft("cases", field);
    commit(plan, UUID.randomUUID()).statusCode(200).body("kept", equalTo(1));
    assertThat(reserved(refitCase)).isEqualTo(medium);
    assertThat(plannedIn(UUID.fromString(plan))).isEmpty();
  }

  @Test
  @DisplayName("are asked for once when they have to travel, for the plan and for the case")
  void travelOnce() {
    String tag = helmet(model, SIZE, "DEPOT");
    UUID player = roster.player(field, model, SIZE);
    commit(draft("season", field), UUID.randomUUID()).statusCode(200).body("kept", equalTo(1));
    JsonNode asked = fitting.hears("restock-requested", "tag", tag);
    assertThat(asked.path("kind").asText()).isEqualTo("transfer");
    assertThat(asked.path("place").asText()).isEqualTo(field);
    UUID refitCase = fitting.opens(player, field, Fitting.helmet(model, SIZE));
    assertThat(reserved(refitCase)).isEqualTo(tag);
    List<UUID> transfers =
        database.list(
            "select request from restock where kind = 'transfer' and tag = ?",
            row -> row.getObject(1, UUID.class),
            tag);
    assertThat(transfers).hasSize(1);
  }

  @Test
  @DisplayName("never go to two players, when two plans are committed at the same time")
  void twoPlansAtOnce() throws Exception {
    String other = roster.freshField();
    for (int i = 0; i < 3; i++) {
      helmet(model, SIZE, "DEPOT");
      roster.player(field, model, SIZE);
      roster.player(other, model, SIZE);
    }
    List<String> drafts = List.of(draft("season", field), draft("season", other));
    CyclicBarrier together = new CyclicBarrier(2);
    List<Future<Integer>> all = new ArrayList<>();
    int kept = 0;
    try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
      for (String plan : drafts) {
        all.add(
            threads.submit(
                () -> {
                  together.await();
                  return commit(plan, UUID.randomUUID()).extract().<Integer>path("kept");
                }));
      }
      for (Future<Integer> one : all) {
        kept += one.get(60, TimeUnit.SECONDS);
      }
    }
    assertThat(kept).isEqualTo(3);
    List<String> tags = new ArrayList<>(plannedIn(UUID.fromString(drafts.get(0))));
    tags.addAll(plannedIn(UUID.fromString(drafts.get(1))));
    assertThat(tags).hasSize(3).doesNotHaveDuplicates();
  }

  @Test
  @DisplayName("go as spares to fields that have too few, and are free there once they arrived")
  void evenedOut() {
    String worn = helmet(model, SIZE, field);
    UUID player = roster.player(field, model, SIZE);
    fitting.signsOff(player, worn, field);
    fitting.hears("helmet-issued", "tag", worn);
    String spare = helmet(model, SIZE, "DEPOT");
    UUID plan = UUID.fromString(draft("even-out", ""));
    commit(plan.toString(), UUID.randomUUID()).statusCode(200);
    assertThat(plannedIn(plan)).contains(spare);
    String request = fitting.hears("restock-requested", "tag", spare).path("request").asText();
    expiry.look();
    assertThat(plannedIn(plan)).contains(spare);
    Depot.step(request, "receive").statusCode(200);
    expiry.look();
    assertThat(plannedIn(plan)).doesNotContain(spare);
    UUID refitCase = fitting.opens(UUID.randomUUID(), field, Fitting.helmet(model, SIZE));
    assertThat(reserved(refitCase)).isEqualTo(spare);
  }

  private String draft(String sort, String where) {
    return commandOf("manager")
        .contentType("application/json")
        .body("{\"sort\":\"" + sort + "\",\"field\":\"" + where + "\"}")
        .post("/api/plans")
        .then()
        .statusCode(201)
        .extract()
        .path("plan");
  }

  private static ValidatableResponse commit(String plan, UUID command) {
    return as("manager")
        .header("Idempotency-Key", command)
        .post("/api/plans/" + plan + "/commit")
        .then();
  }

  private List<String> plannedIn(UUID plan) {
    return database.list(
        "select h.tag from planned_helmet p join helmet h on h.tag = p.tag"
            + " and h.planned_for = p.player where p.plan = ? order by 1",
        row -> row.getString(1),
        plan);
  }

  private String reserved(UUID refitCase) {
    return fitting.hears("replacement-reserved", "refitCase", refitCase).path("tag").asText();
  }

  private static Cause newCause() {
    return Cause.command(UUID.randomUUID());
  }
}
