package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.whole.Fitter.as;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("In whichever order the topics are read")
class DeliveryOrderTest {
  private static final String DAMAGED = "The helmet is damaged and in quarantine";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;

  private Peers peers;
  private Delivery delivery;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
    delivery = new Delivery(peers, transactions);
  }

  @AfterEach
  void close() {
    peers.close();
  }

  @ParameterizedTest(name = "shuffle {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  @DisplayName("and whatever comes twice, players and sideline are answered the same")
  void oneAnswer(long seed) {
    TeamStory story = new TeamStory(peers, seed);
    Random random = new Random(seed);
    delivery.withRepeats(Delivery.interleaved(story.streams(), random), random);

    assertThat(sideline(story.team))
        .containsExactly(
            "Ada Amber (" + story.moved.number() + "): never-fitted, Not fitted yet",
            "Ada Birch (" + story.back.number() + "): never-fitted, Not fitted yet",
            "Ada Cedar (" + story.fitted.number() + "): withdrawn, " + DAMAGED);
    assertThat(player(story.moved))
        .isEqualTo(
            "Ada Amber of %s at %s, youth-large; damage of %s, at %s for %s: youth-medium"
                .formatted(story.team, story.away, story.moved.tag(), story.away, story.team));
    assertThat(player(story.back))
        .isEqualTo(
            "Ada Birch of %s at %s, null; retired of %s, at %s for %s: youth-medium"
                .formatted(story.team, story.home, story.back.tag(), story.home, story.team));
    assertThat(player(story.fitted))
        .isEqualTo(
            "Ada Cedar of %s at %s, youth-small; damage of %s, at %s for %s: youth-medium"
                .formatted(story.team, story.home, story.fitted.tag(), story.home, story.team));
    assertThat(player(story.gone))
        .isEqualTo("Ada Dale of %s at %s, null; no re-fit".formatted(story.team, story.home));
  }

  private static List<String> sideline(String team) {
    JsonPath list = as("manager").queryParam("team", team).get("/api/sideline").jsonPath();
    return IntStream.range(0, list.getList("players").size())
        .mapToObj(i -> "players[" + i + "].")
        .map(
            at ->
                "%s (%s): %s, %s"
                    .formatted(
                        list.getString(at + "name"),
                        list.getString(at + "number"),
                        list.getString(at + "state.status"),
                        list.getString(at + "state.reason")))
        .toList();
  }

  private static String player(Person person) {
    JsonPath seen = as("manager").get("/api/players/" + person.player()).jsonPath();
    String refit =
        seen.get("refit") == null
            ? "no re-fit"
            : "%s of %s, at %s for %s: %s"
                .formatted(
                    seen.getString("refit.why"),
                    seen.getString("refit.tag"),
                    seen.getString("refit.field"),
                    seen.getString("refit.team"),
                    String.join(", ", seen.getList("refit.needs.need.size", String.class)));
    return "%s of %s at %s, %s; %s"
        .formatted(
            seen.getString("name"),
            seen.getString("team"),
            seen.getString("field"),
            seen.getString("advice[0].size"),
            refit);
  }

  @Test
  @DisplayName("a case of a player whose roster entry and name come later is booked all the same")
  void playerComesLater() {
    Person person = Person.next();
    String field = "LATER";
    delivery.inOrder(
        peers.field(field),
        peers.received(person.tag(), field),
        peers.issued(person.tag(), person.player(), UUID.randomUUID()),
        peers.quarantined(person.tag(), person.player()));
    as("manager").get("/api/players/" + person.player()).then().statusCode(404);

    delivery.inOrder(peers.enrolled(person.player(), person.number(), person.team(), field));
    UUID refitCase = peers.refitOf(person.player());
    delivery.inOrder(
        peers.reserved(refitCase, person.player(), person.tag() + "X", "youth-medium"));
    UUID day =
        new Fitter("manager", field)
            .announces(LocalDate.now().plusDays(2).toString(), "17:30", "18:00");
    peers.hears("refit-booked", person.player());

    delivery.inOrder(peers.details(person.player(), person.number(), person.team(), field));
    JsonPath seen = as("manager").get("/api/players/" + person.number()).jsonPath();
    assertThat(seen.getString("name")).isEqualTo("Ada Quillfeather");
    assertThat(seen.getString("refit.booking.fitDay")).isEqualTo(day.toString());
    assertThat(seen.getString("refit.needs[0].tag")).isEqualTo(person.tag() + "X");
  }
}
