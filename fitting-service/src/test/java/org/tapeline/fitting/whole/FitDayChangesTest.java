package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
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
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Fit days that are announced, moved and cancelled")
class FitDayChangesTest {
  private static final String DAY = LocalDate.now().plusDays(5).toString();
  private static final String DAY_AFTER = LocalDate.now().plusDays(6).toString();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;

  private Peers peers;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  /** A player whose replacement is there, so that the re-fit waits for a fit day alone. */
  private Person waitsAt(String field) {
    Person person = peers.arrives(field);
    peers.send(
        peers.issued(person.tag(), person.player(), UUID.randomUUID()),
        peers.quarantined(person.tag(), person.player()));
    UUID refitCase = peers.refitOf(person.player());
    peers.send(peers.reserved(refitCase, person.player(), person.tag() + "R", "youth-medium"));
    await().atMost(PATIENCE).until(() -> refit(person).getString("needs[0].arrivesAt") != null);
    return person;
  }

  private JsonPath refit(Person person) {
    Response all = as("manager").get("/api/refits");
    return new JsonPath(all.asString())
        .setRootPath("find { it.player == '" + person.player() + "' }");
  }

  /** What the player's case said of bookings, in order. */
  private List<String> words(Person person) {
    return peers.heardOf(person.player()).stream()
        .map(Message::type)
        .filter(type -> type.contains("refit-") && type.contains("booked"))
        .map(type -> type.replaceAll("org.tapeline.fitting.|.v[0-9]+", ""))
        .toList();
  }

  private void hears(Person person, String... wanted) {
    assertThat(words(person)).containsExactly(wanted);
  }

  @Test
  @DisplayName("everybody on a day that is moved keeps the place in the row and is told once")
  void moved() {
    Person first = waitsAt("MOVE-ONE");
    Person second = waitsAt("MOVE-ONE");
    Fitter fitter = new Fitter("manager", "MOVE-ONE");
    UUID day = fitter.announces(DAY, "17:30", "18:00");
    String before = refit(second).getString("booking.startsAt");
    fitter.moves(day, DAY_AFTER, "16:30", "17:00");
    fitter.moves(day, DAY_AFTER, "16:30", "17:00");
    assertThat(refit(first).getString("booking.startsAt")).startsWith(DAY_AFTER);
    assertThat(refit(second).getString("booking.startsAt"))
        .isGreaterThan(refit(first).getString("booking.startsAt"))
        .isNotEqualTo(before);
    hears(first, "refit-booked", "refit-booked");
    hears(second, "refit-booked", "refit-booked");
  }

  @Test
  @DisplayName(
      "who finds no room on a shorter day gets another day; who keeps the slot hears nothing")
  void shortened() {
    Person first = waitsAt("MOVE-TWO");
    Person second = waitsAt("MOVE-TWO");
    Fitter fitter = new Fitter("manager", "MOVE-TWO");
    UUID day = fitter.announces(DAY, "17:30", "18:00");
    fitter.announces(DAY_AFTER, "17:30", "18:00");
    fitter.moves(day, DAY, "17:30", "17:45");
    assertThat(refit(second).getString("booking.startsAt")).startsWith(DAY_AFTER);
    hears(first, "refit-booked");
    hears(second, "refit-booked", "refit-booked");
  }

  @Test
  @DisplayName(
      "when a day is cancelled and there is no other, that is said once, and the next day too")
  void cancelledWithoutAnother() {
    Person person = waitsAt("CALL-OFF");
    Fitter fitter = new Fitter("manager", "CALL-OFF");
    UUID day = fitter.announces(DAY, "17:30", "18:00");
    fitter.cancels(day);
    hears(person, "refit-booked", "refit-unbooked");
    assertThat(refit(person).getString("booking")).isNull();
    fitter.announces(DAY, "17:30", "18:00");
    hears(person, "refit-booked", "refit-unbooked", "refit-booked");
  }

  @Test
  @DisplayName("siblings get slots one after the other, though another case lies between them")
  void siblings() {
    Person first = waitsAt("SIBLINGS");
    Person between = waitsAt("SIBLINGS");
    Person sibling = waitsAt("SIBLINGS");
    peers.send(peers.guardian(UUID.randomUUID(), first.player(), sibling.player()));
    awaitGuardianOf(first);
    new Fitter("manager", "SIBLINGS").announces(DAY, "17:30", "18:15");
    String second = refit(sibling).getString("booking.startsAt");
    assertThat(refit(first).getString("booking.startsAt")).isLessThan(second);
    assertThat(refit(between).getString("booking.startsAt")).isGreaterThan(second);
  }

  private void awaitGuardianOf(Person person) {
    await()
        .atMost(PATIENCE)
        .until(() -> count("select count(*) from guardianship where player = ?", person) == 1);
  }

  @Test
  @DisplayName("a guardian's tombstone leaves nothing that says who brings whom")
  void erased() {
    Person person = peers.arrives("ERASED");
    UUID guardian = UUID.randomUUID();
    peers.send(peers.guardian(guardian, person.player()));
    awaitGuardianOf(person);
    peers.send(peers.guardianErased(guardian));
    await()
        .atMost(PATIENCE)
        .until(() -> count("select count(*) from guardianship where player = ?", person) == 0);
  }

  @Test
  @DisplayName("whoever has no helmet that may be worn comes before an older case that has one")
  void urgency() {
    Person older = waitsAt("URGENCY");
    Person without = waitsAt("URGENCY");
    // A case of somebody who has a helmet is rare: here the sign-off is put where it would stand.
    run(
        "insert into sign_off (player, state, tag, at) values (?, 'signed-off', ?, now())",
        older.player(),
        "SPARE-" + older.tag());
    new Fitter("manager", "URGENCY").announces(DAY, "17:30", "17:45");
    assertThat(refit(without).getString("booking")).isNotNull();
    assertThat(refit(older).getString("booking")).isNull();
    hears(older);
  }

  @Test
  @DisplayName("two days that are announced at once book each case once")
  void atOnce() throws Exception {
    List<Person> people = List.of(waitsAt("AT-ONCE"), waitsAt("AT-ONCE"));
    CyclicBarrier together = new CyclicBarrier(2);
    try (ExecutorService threads = Executors.newFixedThreadPool(2)) {
      List<Future<UUID>> both =
          List.of(DAY, DAY_AFTER).stream()
              .map(
                  date ->
                      threads.submit(
                          () -> {
                            together.await(30, TimeUnit.SECONDS);
                            return new Fitter("manager", "AT-ONCE")
                                .announces(date, "17:30", "17:45");
                          }))
              .toList();
      for (Future<UUID> one : both) {
        one.get(60, TimeUnit.SECONDS);
      }
    }
    assertThat(people.stream().map(p -> refit(p).getString("booking.startsAt")).distinct())
        .hasSize(2)
        .doesNotContainNull();
    for (Person person : people) {
      hears(person, "refit-booked");
    }
  }

  @Test
  @DisplayName("a move that cannot be is refused with the entry that is wrong")
  void refused() {
    peers.send(peers.field("REFUSED"));
    await().atMost(PATIENCE).until(() -> place("REFUSED"));
    Fitter fitter = new Fitter("manager", "REFUSED");
    UUID day = fitter.announces(DAY, "17:30", "18:00");
    Response wrong = fitter.tries(day, DAY, "17:30", "17:35", 0);
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.jsonPath().getString("errors[0].field")).isEqualTo("fitters");
    assertThat(fitter.tries(UUID.randomUUID(), DAY, "17:30", "18:00", 1).statusCode())
        .isEqualTo(404);
    assertThat(
            new Fitter("fitter.north", "REFUSED").tries(day, DAY, "9:00", "9:30", 1).statusCode())
        .isEqualTo(403);
    fitter.cancels(day);
    assertThat(fitter.tries(day, DAY_AFTER, "17:30", "18:00", 1).statusCode()).isEqualTo(409);
  }

  private boolean place(String field) {
    return as("manager").get("/fit-days").asString().contains("value=\"" + field + "\"");
  }

  @Test
  @DisplayName("the form of the page moves a day, and says what is wrong beside the entry")
  void onThePage() {
    peers.send(peers.field("ON-PAGE"));
    await().atMost(PATIENCE).until(() -> place("ON-PAGE"));
    UUID day = new Fitter("manager", "ON-PAGE").announces(DAY, "17:30", "18:00");
    Response wrong = form(day, "17:30", "17:31");
    assertThat(wrong.statusCode()).isEqualTo(422);
    assertThat(wrong.asString())
        .contains("id=\"closes-" + day + "-error\">Must leave time for at least one fit.");
    assertThat(form(day, "18:00", "19:00").statusCode()).isEqualTo(303);
    assertThat(as("manager").get("/fit-days").asString())
        .contains("6:00 PM to 7:00 PM", "No check at this field was counted yet");
  }

  private static Response form(UUID day, String opens, String closes) {
    return as("manager")
        .redirects()
        .follow(false)
        .formParams(
            Map.of(
                "commandId",
                UUID.randomUUID().toString(),
                "field",
                "ON-PAGE",
                "date",
                DAY,
                "opens",
                opens,
                "closes",
                closes,
                "fitters",
                "1",
                "minutesPerFit",
                "15"))
        .post("/fit-days/" + day + "/move");
  }

  @Test
  @DisplayName("without minutes a day gets those that its checks take, whatever was left open")
  void minutes() {
    Person person = waitsAt("MINUTES");
    for (int n = 0; n < 60; n++) {
      run(
          "insert into fit_session (session, player, field, fitter, status, at, ended_at) values"
              + " (gen_random_uuid(), ?, ?, 'fitter', 'PASSED', now() - interval '22 minutes',"
              + " now())",
          person.player(),
          "MINUTES");
    }
    for (int n = 0; n < 5; n++) {
      run(
          "insert into fit_session (session, player, field, fitter, status, at, ended_at) values"
              + " (gen_random_uuid(), ?, ?, 'fitter', 'PASSED', now() - interval '9 hours', now())",
          person.player(),
          "MINUTES");
    }
    Response said = as("manager").queryParam("field", "MINUTES").get("/api/fit-days/minutes");
    assertThat(said.jsonPath().getInt("minutesPerFit")).as(said.asString()).isEqualTo(25);
    assertThat(said.jsonPath().getString("said")).startsWith("60 of 60 checks at this field");
    String day =
        Fitter.post(
                "manager",
                "/api/fit-days",
                Map.of("field", "MINUTES", "date", DAY, "opens", "17:30", "closes", "18:20"))
            .jsonPath()
            .getString("fitDay");
    assertThat(
            as("manager")
                .get("/api/fit-days")
                .jsonPath()
                .getInt("find { it.fitDay == '" + day + "' }.minutesPerFit"))
        .isEqualTo(25);
  }

  private void run(String sql, Object... values) {
    transactions.required(
        connection -> {
          try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int at = 0; at < values.length; at++) {
              statement.setObject(at + 1, values[at]);
            }
            return statement.executeUpdate();
          }
        });
  }

  private long count(String sql, Person person) {
    return transactions.required(
        connection -> {
          try (PreparedStatement select = connection.prepareStatement(sql)) {
            select.setObject(1, person.player());
            try (ResultSet row = select.executeQuery()) {
              return row.next() ? row.getLong(1) : 0L;
            }
          }
        });
  }
}
