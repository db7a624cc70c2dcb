package org.tapeline.stack.gateway;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.servers.Ports;

class ChainPageTest {
  private static final String CHAIN = "01900000-0000-7000-8000-000000000001";

  private StubService fitting;
  private StubService inventory;
  private Gateway gateway;

  @BeforeEach
  void start() throws Exception {
    fitting = service("fit-failed", "10:00:00.000Z", "refit-booked", "10:00:00.120Z");
    inventory = service("replacement-reserved", "10:00:00.050Z", "helmet-moved", "10:00:00.300Z");
    gateway =
        Gateway.start(
            new GatewaySettings(
                "127.0.0.1",
                0,
                Map.of(
                    "fitting",
                    fitting.address(),
                    "inventory",
                    inventory.address(),
                    "notify",
                    "http://127.0.0.1:" + Ports.free()),
                Optional.empty(),
                Optional.empty()));
  }

  @AfterEach
  void stop() {
    gateway.close();
    fitting.close();
    inventory.close();
  }

  @Test
  @DisplayName(
      "The events of all services stand in the order of time, with the time since the first")
  void ordersByTime() throws Exception {
    JsonNode chain = new ObjectMapper().readTree(get("application/json", "let me in").body());
    assertThat(chain.get("events"))
        .extracting(e -> e.get("event").asText() + " +" + e.get("afterMillis").asLong())
        .containsExactly(
            "fit failed +0", "replacement reserved +50", "refit booked +120", "helmet moved +300");
    assertThat(chain.get("away")).extracting(JsonNode::asText).containsExactly("notify");
  }

  @Test
  @DisplayName("On a page the chain says which service could not be asked")
  void hasAPage() throws Exception {
    HttpResponse<String> page = get("text/html", "let me in");
    assertThat(page.statusCode()).isEqualTo(200);
    assertThat(page.body()).contains("replacement reserved", "not reachable: notify");
  }

  @Test
  @DisplayName("The caller's own sign-in decides: who has none signs in first")
  void asksAsTheCaller() throws Exception {
    assertThat(get("text/html", "").headers().firstValue("Location")).contains("/sign-in");
    assertThat(get("application/json", "").statusCode()).isEqualTo(401);
  }

  private HttpResponse<String> get(String accept, String authorization) throws Exception {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(
                URI.create("http://localhost:" + gateway.port() + "/chains/" + CHAIN))
            .header("Accept", accept);
    if (!authorization.isEmpty()) {
      request.header("Authorization", authorization);
    }
    return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  private static StubService service(String first, String at, String second, String then)
      throws Exception {
    String links = "[" + link(first, at) + "," + link(second, then) + "]";
    return StubService.start(
        exchange -> {
          boolean signedIn =
              "let me in".equals(exchange.getRequestHeaders().getFirst("Authorization"));
          StubService.answer(
              exchange, signedIn ? 200 : 401, "application/json", signedIn ? links : "");
        });
  }

  private static String link(String type, String time) {
    return """
    {"service":"x","id":"%s","stream":"s-1","version":1,"type":"org.tapeline.x.%s.v1",\
    "time":"2026-08-01T%s","causationId":"%s","data":{"at":"NORTH"}}\
    """
        .formatted(CHAIN, type, time, CHAIN);
  }
}
