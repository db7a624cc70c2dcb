package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.whole.Depot.damage;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.Subscription;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka.Message;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The contracts")
class ContractsTest {
  private final EventContracts contracts = EventContracts.load();

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject EventTypes types;
  @Inject Subscription subscription;

  @Test
  @DisplayName("name exactly what inventory says, with examples that fit")
  void produced() {
    assertThat(contracts.typesOf("inventory.events")).isEqualTo(types.names());
    types.names().forEach(t -> contracts.validateProduced(t, contracts.exampleOf(t)));
  }

  @Test
  @DisplayName("promise every field that inventory reads")
  void consumed() {
    assertThat(subscription.views()).isNotEmpty();
    subscription.views().forEach(contracts::checkConsumed);
  }

  @Test
  @DisplayName("hold no type that inventory neither handles nor ignores")
  void known() {
    for (String topic : List.of("sizing.events", "fitting.events")) {
      assertThat(contracts.typesOf(topic)).isNotEmpty().allMatch(subscription::knows);
    }
  }

  @Test
  @DisplayName("fit what stands on Kafka")
  void onKafka() {
    Depot.places();
    String model = freshModel();
    String tag = helmet(model, "youth-small", "RIVER");
    try (Fitting fitting = new Fitting(bootstrap)) {
      UUID player = UUID.randomUUID();
      UUID first = fitting.opens(player, "NORTH", Fitting.helmet(model, "youth-small"));
      fitting.hears("replacement-reserved", "refitCase", first);
      damage("manager", tag, "shell", "crack").statusCode(200);
      fitting.hears("replacement-missing", "refitCase", first);
      fitting.closes(first, player, "cancelled");
      fitting.hears("restock-cancelled", "place", "NORTH");
      List<Message> said = fitting.everything();
      assertThat(said).isNotEmpty();
      said.forEach(m -> contracts.validateProduced(m.type(), m.data()));
    }
  }
}
