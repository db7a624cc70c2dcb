package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.stateOf;
import static org.tapeline.inventory.whole.Depot.stateOfRequest;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reservation.Expiry;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("A helmet that has been kept too long")
class ExpiryTest {
  private static final String SIZE = "youth-medium";
  private static final Instant AUGUST = Instant.parse("2026-08-01T08:00:00Z");

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Inject Expiry expiry;
  @Inject Database database;

  private Fitting fitting;
  private final String model = freshModel();

  @BeforeEach
  void start() {
    Depot.places();
    fitting = new Fitting(bootstrap);
  }

  @AfterEach
  void stop() {
    fitting.close();
  }

  @Test
  @DisplayName("goes to who has waited longest, and for its own case another is asked for")
  void next() {
    String tag = helmet(model, SIZE, "NORTH");
    UUID keeper = waits("do-not-wear", 0);
    reserved(keeper, 1);
    UUID late = waits("do-not-wear", 2);
    missing(late, 1);
    UUID early = waits("do-not-wear", 1);
    String request = missing(early, 1);

    lets(keeper);
    assertThat(fitting.hears("reservation-released", "refitCase", keeper).path("why").asText())
        .isEqualTo("expired");
    assertThat(reserved(early, 1)).isEqualTo(tag);
    assertThat(missing(keeper, 1)).isEqualTo(request);
    assertThat(stateOf(tag)).isEqualTo("reserved");
    JsonNode asked = fitting.hears("restock-requested", "request", request, 4).getLast();
    assertThat(asked.path("causes").valueStream().map(JsonNode::asText))
        .containsExactlyInAnyOrder(late.toString(), keeper.toString());
  }

  @Test
  @DisplayName("goes to the next even when its own case is the more urgent")
  void lessUrgent() {
    String tag = helmet(model, SIZE, "NORTH");
    UUID keeper = waits("do-not-wear", 0);
    reserved(keeper, 1);
    UUID other = waits("soon", 1);
    String request = missing(other, 1);

    lets(keeper);
    assertThat(reserved(other, 1)).isEqualTo(tag);
    assertThat(missing(keeper, 1)).isNotEqualTo(request);
    assertThat(stateOfRequest(request)).isEqualTo("CANCELLED");
  }

  @Test
  @DisplayName("stays with its case when nobody else waits for it")
  void nobodyElse() {
    String tag = helmet(model, SIZE, "NORTH");
    UUID keeper = waits("soon", 0);
    reserved(keeper, 1);
    lets(keeper);
    assertThat(reserved(keeper, 2)).isEqualTo(tag);
    assertThat(stateOf(tag)).isEqualTo("reserved");
  }

  @Test
  @DisplayName("is another matter than one that may be kept still")
  void inTime() {
    String tag = helmet(model, SIZE, "NORTH");
    UUID keeper = waits("soon", 0);
    reserved(keeper, 1);
    missing(waits("do-not-wear", 1), 1);
    expiry.look();
    assertThat(stateOf(tag)).isEqualTo("reserved");
    UUID last = waits("soon", 2);
    missing(last, 1);
    assertThat(
            fitting.everything().stream()
                .filter(m -> m.type().endsWith("reservation-released.v1"))
                .map(m -> m.data().path("refitCase").asText()))
        .doesNotContain(keeper.toString());
  }

  /**
   * Lets the time pass that something is kept for, and the hour come at which that is looked at.
   */
  private void lets(UUID refitCase) {
    int changed =
        database.change(
            "update reservation set expires_at = now() - interval '1 minute'"
                + " where refit_case = ? and status = 'live'",
            refitCase);
    assertThat(changed).isEqualTo(1);
    expiry.look();
  }

  private UUID waits(String urgency, int minutes) {
    return fitting.opensAt(
        AUGUST.plusSeconds(minutes * 60L), urgency, "NORTH", Fitting.helmet(model, SIZE));
  }

  private String reserved(UUID refitCase, int times) {
    List<JsonNode> said = fitting.hears("replacement-reserved", "refitCase", refitCase, times);
    assertThat(said).hasSize(times);
    return said.getLast().path("tag").asText();
  }

  private String missing(UUID refitCase, int times) {
    List<JsonNode> said = fitting.hears("replacement-missing", "refitCase", refitCase, times);
    assertThat(said).hasSize(times);
    return said.getLast().at("/requests/0").asText();
  }
}
