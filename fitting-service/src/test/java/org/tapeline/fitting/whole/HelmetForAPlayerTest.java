package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
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
@DisplayName("A helmet that is kept for a player")
class HelmetForAPlayerTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;

  private final Fitter fitter = new Fitter("fitter.north", "NORTH");
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

  @Test
  @DisplayName("is for that player alone until it is released, also by a case not known here")
  void kept() {
    Person other = peers.arrives("NORTH");
    Person owner = Person.next();
    UUID refitCase = UUID.randomUUID();
    delivery.inOrder(peers.reserved(refitCase, owner.player(), other.tag(), "youth-medium"));
    UUID others = fitter.opens(other.player());
    Response refused = fitter.triesOn(others, other.tag());
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.asString()).contains("helmet-not-free", "kept for another player");

    delivery.inOrder(peers.enrolled(owner.player(), owner.number(), owner.team(), "NORTH"));
    UUID owners = fitter.opens(owner.player());
    assertThat(fitter.triesOn(owners, other.tag()).statusCode()).isEqualTo(200);

    delivery.inOrder(peers.released(refitCase, owner.player(), other.tag()));
    assertThat(fitter.triesOn(others, other.tag()).statusCode()).isEqualTo(200);
  }
}
