package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
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
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A hold that was placed, of which the helmet's own event is still to come,")
class HoldAheadTest {
  private static final String LOT = "LOT-AHEAD";
  private static final String HELMET = "model-a";
  private static final String MADE = "2024-03-05";

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private final UUID hold = UUID.randomUUID();
  private Peers peers;
  private Holds holds;
  private Delivery delivery;

  @BeforeEach
  void open() {
    peers = new Peers(kafka);
    holds = new Holds(peers);
    delivery = new Delivery(peers, transactions);
  }

  @AfterEach
  void close() {
    peers.send(holds.lifted(hold, "whole", List.of()));
    peers.close();
  }

  @Test
  @DisplayName(
      "ends \"may wear\" at once, hands the helmet to nobody and leaves other helmets alone")
  void atOnce() {
    Person concerned = wears(LOT);
    Person other = wears("LOT-OTHER");
    delivery.inOrder(holds.placed(hold, List.of(LOT), List.of(), Map.of("model", HELMET)));
    assertThat(Fitter.state(concerned, "code")).isEqualTo("do-not-wear");
    assertThat(Fitter.state(concerned, "reason")).isEqualTo("The helmet is on hold");
    assertThat(Fitter.state(other, "code")).isEqualTo("may-wear");
    UUID session = fitter.opens(concerned.player());
    assertThat(fitter.triesOn(session, concerned.tag()).asString()).contains("on hold");
    assertThat(fitter.triesOn(session, other.tag()).asString()).contains("another player");

    delivery.inOrder(peers.held(concerned.tag(), hold, concerned.player()));
    assertThat(Fitter.state(concerned, "status")).isEqualTo("withdrawn");
    delivery.inOrder(peers.freed(concerned.tag(), hold, "available"));
    assertThat(fitter.triesOn(session, concerned.tag()).statusCode()).isEqualTo(200);
  }

  /** What a hold asks beside the lot, and what is then said of who wears a helmet of that lot. */
  private record Ask(Map<String, String> asks, String code) {}

  @Test
  @DisplayName("concerns what meets all of its conditions")
  void conditions() {
    Person person = wears(LOT);
    for (Ask ask :
        List.of(
            new Ask(Map.of(), "do-not-wear"),
            new Ask(Map.of("model", "model-b"), "may-wear"),
            new Ask(Map.of("madeFrom", MADE, "madeTo", MADE), "do-not-wear"),
            new Ask(Map.of("madeFrom", "2024-03-06"), "may-wear"),
            new Ask(Map.of("madeTo", "2024-03-04"), "may-wear"),
            new Ask(Map.of("model", HELMET, "madeFrom", "2024-01-01"), "do-not-wear"))) {
      UUID one = UUID.randomUUID();
      delivery.inOrder(holds.placed(one, List.of(LOT), List.of(), ask.asks()));
      assertThat(Fitter.state(person, "code")).as(ask.toString()).isEqualTo(ask.code());
      delivery.inOrder(holds.lifted(one, "whole", List.of()));
    }
  }

  @Test
  @DisplayName("concerns a helmet whose lot nobody could read, and one of the tag list")
  void lotNotStatedAndTag() {
    Person unread = wears("not-stated");
    Person listed = wears("LOT-LISTED");
    delivery.inOrder(
        holds.placed(hold, List.of(LOT), List.of(listed.tag()), Map.of("model", HELMET)));
    assertThat(Fitter.state(unread, "code")).isEqualTo("do-not-wear");
    assertThat(Fitter.state(listed, "code")).isEqualTo("do-not-wear");
  }

  @Test
  @DisplayName("is over when it is lifted, in whole or for the helmet")
  void lifted() {
    Person person = wears(LOT);
    Map<String, String> scopes =
        Map.of("whole", "", "lots", LOT, "tags", person.tag(), "place", "NORTH");
    scopes.forEach(
        (scope, of) -> {
          UUID one = UUID.randomUUID();
          delivery.inOrder(holds.placed(one, List.of(LOT), List.of(), Map.of("model", HELMET)));
          assertThat(Fitter.state(person, "code")).as(scope).isEqualTo("do-not-wear");
          delivery.inOrder(holds.lifted(one, scope, List.of(of)));
          assertThat(Fitter.state(person, "code")).as(scope).isEqualTo("may-wear");
          peers.send(holds.lifted(one, "whole", List.of()));
        });
  }

  @Test
  @DisplayName("stands when other lots, tags and places are lifted")
  void othersLifted() {
    Person person = wears(LOT);
    delivery.inOrder(
        holds.placed(hold, List.of(LOT), List.of(), Map.of("model", HELMET)),
        holds.lifted(hold, "lots", List.of("LOT-OTHER")),
        holds.lifted(hold, "tags", List.of("LV0000")),
        holds.lifted(hold, "place", List.of("SOUTH")));
    assertThat(Fitter.state(person, "code")).isEqualTo("do-not-wear");
  }

  @Test
  @DisplayName("that is heard of after the helmet was held and freed changes nothing any more")
  void late() {
    Person person = wears(LOT);
    delivery.inOrder(
        peers.held(person.tag(), hold, person.player()),
        peers.freed(person.tag(), hold, "available"),
        holds.placed(hold, List.of(LOT), List.of(), Map.of("model", HELMET)));
    UUID session = fitter.opens(person.player());
    assertThat(fitter.triesOn(session, person.tag()).statusCode()).isEqualTo(200);
  }

  /** Somebody who may wear a helmet of that lot. */
  private Person wears(String lot) {
    Person person = peers.arrives("NORTH");
    delivery.inOrder(peers.receivedOf(person.tag(), lot, MADE));
    UUID session = fitter.fits(person.player(), person.tag());
    delivery.inOrder(peers.issued(person.tag(), person.player(), session));
    assertThat(Fitter.state(person, "code")).isEqualTo("may-wear");
    return person;
  }
}
