package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.fitting.whole.Fitter.PATIENCE;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@Tag("containers")
@DisplayName("The contracts")
class ContractsTest {
  /** A sign-off lapses after days; RecheckTest lets them go by. */
  private static final String NEVER_SAID = "org.tapeline.fitting.sign-off-lapsed.v1";

  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject EventTypes types;
  @Inject Subscription subscription;

  @Test
  @DisplayName("name exactly what fitting says, with examples that fit")
  void produced() {
    assertThat(contracts.typesOf("fitting.events")).isEqualTo(types.namesOf(Record.class));
    types.names().forEach(t -> contracts.validateProduced(t, contracts.exampleOf(t)));
  }

  @Test
  @DisplayName("lose no field of an example when fitting reads it and writes it again")
  void writtenAgain() throws JsonProcessingException {
    for (String type : types.names()) {
      JsonNode example = contracts.exampleOf(type);
      JsonNode again = EventJson.MAPPER.readTree(types.write(types.read(type, example.toString())));
      contracts.validateProduced(type, again);
      assertThat(again.equals(ContractsTest::sameValue, example))
          .as("%s: %s", type, again)
          .isTrue();
    }
  }

  /** 24 and 24.0 are one number to a reader of JSON. */
  private static int sameValue(JsonNode one, JsonNode other) {
    boolean same =
        one.isNumber() && other.isNumber()
            ? one.decimalValue().compareTo(other.decimalValue()) == 0
            : one.equals(other);
    return same ? 0 : 1;
  }

  @Test
  @DisplayName("promise every field that fitting reads, and their examples can be read")
  void consumed() throws JsonProcessingException {
    assertThat(subscription.views()).isNotEmpty();
    for (Map.Entry<String, Class<? extends Record>> view : subscription.views().entrySet()) {
      JsonNode example = contracts.exampleOf(view.getKey());
      contracts.checkConsumed(view.getKey(), view.getValue());
      contracts.validateProduced(view.getKey(), example);
      assertThat(EventJson.MAPPER.treeToValue(example, view.getValue()))
          .as(view.getKey())
          .hasNoNullFieldsOrProperties();
    }
  }

  @Test
  @DisplayName("hold no type that fitting neither handles nor ignores")
  void known() {
    for (String topic : List.of("people", "sizing.events", "inventory.events")) {
      assertThat(subscription.topics()).contains(topic);
      assertThat(contracts.typesOf(topic)).isNotEmpty().allMatch(subscription::knows);
    }
  }

  @Test
  @DisplayName("fit what stands on Kafka: sessions with every end, a re-fit and its fit day")
  void onKafka() {
    try (Peers peers = new Peers(bootstrap)) {
      everythingHappens(peers);
      Set<String> wanted = new TreeSet<>(types.names());
      wanted.remove(NEVER_SAID);
      await()
          .atMost(PATIENCE)
          .untilAsserted(() -> assertThat(said(peers).map(Message::type)).containsAll(wanted));
      said(peers).forEach(m -> contracts.validateProduced(m.type(), m.data()));
    }
  }

  private static Stream<Message> said(Peers peers) {
    return peers
        .kafka
        .await("fitting.events", Integer.MAX_VALUE, Duration.ofSeconds(2), m -> true)
        .stream();
  }

  private static void everythingHappens(Peers peers) {
    // A field of its own: a day that is cancelled must leave no slot of another test.
    Person ada = peers.arrives("CONTRACTS");
    Fitter fitter = new Fitter("manager", "CONTRACTS");
    UUID first = fitter.opensWith(ada.player(), ada.tag());
    fitter.findsLoose(first);
    fitter.addsAir(first);
    fitter.passes(first);
    fitter.fails(ada.player(), ada.tag());
    UUID refitCase = peers.refitOf(ada.player());
    peers.send(peers.reserved(refitCase, ada.player(), ada.tag() + "X", "youth-small"));
    UUID day = fitter.announces(LocalDate.now().plusDays(3).toString(), "17:30", "18:00");
    peers.hears("refit-booked", ada.player());
    fitter.moves(day, LocalDate.now().plusDays(4).toString(), "17:30", "18:00");
    fitter.cancels(day);
    UUID mistaken = fitter.fits(ada.player(), ada.tag());
    fitter.says("/api/hair-changes", Map.of("player", ada.number(), "hair", "short"));
    fitter.takesBackThePass(mistaken);
    UUID strayed = fitter.opensWith(ada.player(), ada.tag());
    fitter.pauses(strayed);
    fitter.resumes(strayed);
    fitter.findsLoose(strayed);
    fitter.passesOverAir(strayed);
    fitter.takesBackTheAnswer(strayed);
    fitter.abandons(fitter.opens(ada.player()));
    fitter.says("/api/conditions", Map.of("field", "CONTRACTS", "air", "70", "unit", "F"));
    fitter.says("/api/concussions", Map.of("player", ada.number()));
    fitter.says("/api/concussions/" + ada.player() + "/return", Map.of("confirmed", true));
  }
}
