package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.IOException;
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
  @Test
  @DisplayName("is the whole answer: what is asked next on the connection is answered")
  void next() throws IOException {
    try (KeptConnection connection = new KeptConnection(RestAssured.port, "manager")) {
      assertThat(connection.ask("HEAD", "/inventory/restock/live"))
          .contains("http/1.1 200 ok")
          .anyMatch(line -> line.startsWith("content-type: text/event-stream"));
      assertThat(connection.ask("GET", "/inventory/q/health/live")).contains("http/1.1 200 ok");
    }
  }
}
