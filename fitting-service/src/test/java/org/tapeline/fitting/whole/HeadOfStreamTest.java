package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.IOException;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.KeptConnection;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("The head alone of the live list")
class HeadOfStreamTest {
  @ConfigProperty(name = "kafka.bootstrap.servers")
  String bootstrap;

  @Test
  @DisplayName("is the whole answer: what is asked next on the connection is answered")
  void next() throws IOException {
    try (Peers peers = new Peers(bootstrap)) {
      peers.arrives("NORTH"); // of a list with nobody in it there is no stream
    }
    try (KeptConnection connection = new KeptConnection(RestAssured.port, "manager")) {
      assertThat(connection.ask("HEAD", "/fitting/sideline/live"))
          .contains("http/1.1 200 ok")
          .anyMatch(line -> line.startsWith("content-type: text/event-stream"));
      assertThat(connection.ask("GET", "/fitting/q/health/live")).contains("http/1.1 200 ok");
    }
  }
}
