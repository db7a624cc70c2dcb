package org.tapeline.sizing.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.tapeline.sizing.whole.Association.CHARTS;
import static org.tapeline.sizing.whole.Association.commandOf;
import static org.tapeline.sizing.whole.Association.enrolledAt;
import static org.tapeline.sizing.whole.Association.idOf;
import static org.tapeline.sizing.whole.Association.importing;
import static org.tapeline.sizing.whole.Association.measure;
import static org.tapeline.sizing.whole.Association.player;
import static org.tapeline.sizing.whole.Association.players;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.EventTypes;
import org.tapeline.sizing.whole.Broker.Message;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("What sizing says")
class ProducedContractTest {
  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Months months;

  @Inject EventTypes types;

  @Test
  @DisplayName("is in the contracts, type for type")
  void types() {
    assertThat(contracts.typesOf("sizing.events")).isEqualTo(types.names());
  }

  @Test
  @DisplayName("has examples that fit their own contracts")
  void examples() {
    for (String topic : List.of("sizing.events", "people")) {
      assertThat(contracts.typesOf(topic)).isNotEmpty();
      contracts
          .typesOf(topic)
          .forEach(type -> contracts.validateProduced(type, contracts.exampleOf(type)));
    }
  }

  @Test
  @DisplayName("fits the contracts on Kafka: one player's whole life, and a chart")
  void onKafka() {
    importing("charts", "all-or-none", CHARTS).statusCode(200);
    String number = enrolledAt("NORTH");
    UUID player = idOf(number);
    importing("players", "all-or-none", players(player(number, "SOUTH"))).statusCode(200);
    measure("fitter.south", number, "22 7/8", "581", "58,1 cm").statusCode(200);
    // Larger than hardly any child's, and beyond the chart.
    commandOf("fitter.south")
        .contentType("application/json")
        .body(Map.of("readings", List.of("23 7/8", "606"), "confirmed", true, "hair", "braids"))
        .post("/api/players/" + number + "/readings")
        .then()
        .statusCode(200);
    correct(number, Map.of("version", 3, "readings", List.of("581", "582"), "why", "misread"));
    correct(number, Map.of("version", 5, "why", "wrong-player"));
    commandOf("manager").delete("/api/players/" + number).then().statusCode(204);
    UUID old = idOf(agedHead());
    commandOf("manager")
        .contentType("application/json")
        .body(Map.of())
        .post("/api/size-mix/model-a/publish")
        .then()
        .statusCode(200);

    try (Broker broker = new Broker(kafka)) {
      await()
          .atMost(Duration.ofSeconds(20))
          .until(
              () ->
                  broker.ofKey("sizing.events", player).stream().anyMatch(m -> m.is("player-left"))
                      && broker.ofKey("people", player).getLast().data() == null
                      && broker.ofKey("sizing.events", old).stream()
                          .anyMatch(m -> m.is("remeasure-due")));
      List<Message> said = broker.all("sizing.events");
      said.forEach(m -> contracts.validateProduced(m.type(), m.data()));
      Set<String> seen = new TreeSet<>(said.stream().map(Message::type).toList());
      assertThat(seen).isEqualTo(contracts.typesOf("sizing.events"));
      List<Message> people = broker.all("people").stream().filter(m -> m.data() != null).toList();
      people.forEach(m -> contracts.validateProduced(m.type(), m.data()));
      assertThat(people.stream().map(Message::type)).containsAll(contracts.typesOf("people"));
    }
  }

  private String agedHead() {
    String number = enrolledAt("NORTH");
    measure("fitter.north", number, "535", "535").statusCode(200);
    months.pass(idOf(number), 14);
    return number;
  }

  private static void correct(String number, Map<String, Object> correction) {
    commandOf("fitter.south")
        .contentType("application/json")
        .body(correction)
        .post("/api/players/" + number + "/corrections")
        .then()
        .statusCode(200);
  }
}
