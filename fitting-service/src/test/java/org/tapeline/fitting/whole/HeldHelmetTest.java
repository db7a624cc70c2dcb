package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A helmet that is put on hold")
class HeldHelmetTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
  private final UUID hold = UUID.randomUUID();
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
  @ValueSource(longs = {1, 2, 3})
  @DisplayName("ends the sign-off in it and opens one case, each once, however often it is told")
  void signedOff(long seed) {
    Person person = peers.arrives("NORTH");
    Person other = peers.arrives("NORTH");
    UUID session = fitter.fits(person.player(), person.tag());
    UUID others = fitter.fits(other.player(), other.tag());
    List<Envelope> one =
        List.of(
            peers.issued(person.tag(), person.player(), session),
            peers.held(person.tag(), hold, person.player()));
    List<Envelope> two =
        List.of(
            peers.issued(other.tag(), other.player(), others),
            peers.held(other.tag(), hold, other.player()));
    Random random = new Random(seed);
    delivery.withRepeats(Delivery.interleaved(List.of(one, two), random), random);
    peers.send(one.getLast(), two.getLast());

    for (Person p : List.of(person, other)) {
      assertThat(said("sign-off-withdrawn", p)).containsExactly("hold");
      assertThat(said("refit-opened", p)).containsExactly("hold");
      assertThat(Fitter.state(p, "status")).isEqualTo("withdrawn");
    }
  }

  @Test
  @DisplayName("opens a case for who has it by the records and for who was signed off in it")
  void holderAndSignedOff() {
    Person signedOff = peers.arrives("NORTH");
    Person holder = peers.arrives("NORTH");
    UUID session = fitter.fits(signedOff.player(), signedOff.tag());
    Envelope held;
    delivery.inOrder(
        peers.issued(signedOff.tag(), holder.player(), session),
        held = peers.held(signedOff.tag(), hold, holder.player()));
    peers.send(held);

    assertThat(said("sign-off-withdrawn", signedOff)).containsExactly("hold");
    assertThat(said("refit-opened", signedOff)).containsExactly("hold");
    assertThat(said("refit-opened", holder)).containsExactly("hold");
  }

  @Test
  @DisplayName("says nothing to who was fitted in another helmet meanwhile")
  void fittedInAnother() {
    Person person = peers.arrives("NORTH");
    String former = person.tag() + "F";
    delivery.inOrder(
        peers.received(former, "NORTH"), peers.issued(former, person.player(), UUID.randomUUID()));
    fitter.fits(person.player(), person.tag());
    delivery.inOrder(peers.held(former, hold, person.player()));
    assertThat(Fitter.state(person, "status")).isEqualTo("signed-off");
    assertThat(said("sign-off-withdrawn", person)).isEmpty();
  }

  @Test
  @DisplayName("gives no all clear when it is freed: the player is fitted again first")
  void freed() {
    Person person = peers.arrives("NORTH");
    UUID session = fitter.fits(person.player(), person.tag());
    UUID second = UUID.randomUUID();
    delivery.inOrder(
        peers.issued(person.tag(), person.player(), session),
        peers.held(person.tag(), hold, person.player()),
        peers.held(person.tag(), second, null),
        peers.freed(person.tag(), hold, "held"));
    UUID again = fitter.opens(person.player());
    assertThat(fitter.triesOn(again, person.tag()).asString()).contains("on hold");

    Envelope free = peers.freed(person.tag(), second, "available");
    delivery.inOrder(free);
    peers.send(free);
    assertThat(Fitter.state(person, "status")).isEqualTo("withdrawn");
    assertThat(said("refit-opened", person)).containsExactly("hold");
    assertThat(fitter.triesOn(again, person.tag()).statusCode()).isEqualTo(200);
  }

  /** Why, of each event of that kind on the player. */
  private List<String> said(String event, Person person) {
    return peers.heardOf(person.player()).stream()
        .filter(m -> m.type().matches("org.tapeline.fitting." + event + ".v[0-9]+"))
        .map(m -> m.data().get("why").asText())
        .toList();
  }
}
