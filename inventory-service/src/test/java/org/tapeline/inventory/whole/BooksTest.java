package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Shelves.count;
import static org.tapeline.inventory.whole.Shelves.freshPart;
import static org.tapeline.inventory.whole.Shelves.move;
import static org.tapeline.inventory.whole.Shelves.opening;
import static org.tapeline.inventory.whole.Shelves.pieces;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.books.BooksCheck;
import org.tapeline.inventory.stock.StockDesk;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("The books of parts")
class BooksTest {
  private static final List<String> PLACES = List.of("DEPOT", "NORTH", "RIVER", "SOUTH");

  @Inject BooksCheck check;
  @Inject StockDesk stock;
  @Inject Transactions transactions;
  @Inject DataSource source;

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  private final List<String> parts = List.of(freshPart(), freshPart());

  @BeforeEach
  void places() {
    Depot.places();
  }

  private <T> T any(Random random, List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  @Test
  @DisplayName("balance and are what the journal says, whatever was done in whatever order")
  void balanced() {
    Random random = new Random(20_260_801);
    try (Fitting fitting = new Fitting(bootstrap)) {
      for (int i = 0; i < 60; i++) {
        String part = any(random, parts);
        String place = any(random, PLACES);
        switch (random.nextInt(6)) {
          case 0 -> opening(place, part, random.nextInt(9));
          case 1 -> counts(place, part, random.nextInt(9));
          case 2 -> moves(random, part, place);
          case 3 -> uses(place, part);
          case 4 -> restocks(fitting, random, part);
          default -> move("supplier", place, part, 1 + random.nextInt(3), "delivered");
        }
      }
    }
    await().atMost(Duration.ofSeconds(20)).untilAsserted(this::agree);
  }

  private void agree() {
    BooksCheck.Found found = check.run();
    assertThat(found.unbalanced()).isEmpty();
    assertThat(found.differences()).noneMatch(d -> parts.contains(d.item()));
    assertThat(found.lines()).isPositive();
  }

  private void counts(String place, String part, int counted) {
    JsonNode lines = as("depot").queryParam("place", place).get("/api/stock").as(JsonNode.class);
    for (JsonNode line : lines) {
      if (line.get("item").asText().equals(part) && line.get("model").asText().isEmpty()) {
        int book = line.get("pieces").asInt();
        count("depot", place, part, counted, book, book == counted ? "" : "found").statusCode(200);
      }
    }
  }

  private void moves(Random random, String part, String from) {
    String to = any(random, List.of("DEPOT", "NORTH", "RIVER", "SOUTH", "scrap", "supplier"));
    if (!to.equals(from)) {
      move(from, to, part, 1 + random.nextInt(4), "other").statusCode(200);
    }
  }

  private void uses(String place, String part) {
    UUID session = UUID.randomUUID();
    transactions.required(
        connection -> {
          stock.use(place, part, "model-a", session, 0, Cause.command(session));
          return session;
        });
  }

  /** A case that needs the part: from another place, or from outside; it comes short or damaged. */
  private void restocks(Fitting fitting, Random random, String part) {
    UUID refitCase = fitting.opensFor("NORTH", Fitting.part(part));
    await()
        .atMost(Duration.ofSeconds(20))
        .until(() -> !requestsFor(part).isEmpty() || kept(part) > 0);
    for (String request : requestsFor(part)) {
      int damaged = random.nextInt(2);
      receiveThat(request, 1 - damaged, damaged);
    }
    assertThat(refitCase).isNotNull();
  }

  private static List<String> requestsFor(String part) {
    return as("depot").get("/api/restock").path("findAll { it.item == '" + part + "' }.request");
  }

  private static int kept(String part) {
    List<Integer> kept =
        as("depot").get("/api/stock").path("findAll { it.item == '" + part + "' }.kept");
    return kept.stream().mapToInt(n -> n).sum();
  }

  @Test
  @DisplayName("have both ends of a transfer, and only the good pieces of what came from outside")
  void restocked() {
    String part = parts.getFirst();
    opening("RIVER", part, 1);
    try (Fitting fitting = new Fitting(bootstrap)) {
      UUID first = fitting.opensFor("NORTH", Fitting.part(part));
      fitting.hears("replacement-reserved", "refitCase", first);
      receive(part, 1, 0);
      assertThat(pieces("RIVER", part)).isZero();
      assertThat(pieces("NORTH", part)).isEqualTo(1);
      UUID second = fitting.opensFor("SOUTH", Fitting.part(part));
      UUID third = fitting.opensFor("SOUTH", Fitting.part(part));
      fitting.hears("replacement-missing", "refitCase", second);
      fitting.hears("replacement-missing", "refitCase", third);
      receive(part, 1, 1);
      assertThat(pieces("SOUTH", part)).isEqualTo(1);
    }
    agree();
  }

  private static void receive(String part, int good, int damaged) {
    receiveThat(requestsFor(part).getFirst(), good, damaged);
  }

  private static void receiveThat(String request, int good, int damaged) {
    commandOf("depot")
        .contentType("application/json")
        .body("{\"quantity\":" + good + ",\"damaged\":" + damaged + "}")
        .post("/api/restock/" + request + "/receive")
        .then()
        .statusCode(200);
  }

  @Test
  @DisplayName("are checked for the equipment manager alone")
  void checked() {
    as("manager").get("/api/stock/check").then().statusCode(200);
    as("depot").get("/api/stock/check").then().statusCode(403);
  }

  @Test
  @DisplayName("take no move that is not balanced, whoever writes it")
  void unbalanced() throws SQLException {
    String part = parts.getFirst();
    opening("NORTH", part, 5);
    try (Connection connection = source.getConnection()) {
      connection.setAutoCommit(false);
      UUID move = UUID.randomUUID();
      write(connection, "insert into ledger_move (id, why, at) values (?, 'moved', now())", move);
      write(
          connection,
          "insert into ledger_entry (move, account, item, amount) values (?, 'place:NORTH', '"
              + part
              + "', 1)",
          move);
      assertThatThrownBy(connection::commit)
          .isInstanceOf(SQLException.class)
          .hasMessageContaining("not balanced");
      connection.rollback();
    }
    assertThat(pieces("NORTH", part)).isEqualTo(5);
  }

  private static void write(Connection connection, String sql, UUID move) throws SQLException {
    try (PreparedStatement statement = connection.prepareStatement(sql)) {
      statement.setObject(1, move);
      statement.executeUpdate();
    }
  }
}
