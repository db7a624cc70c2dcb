package org.tapeline.proof.upgrade;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.UUID;

/** One or two copies of fitting-service: one command to the one and the next to the other. */
final class Copies {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  private final HttpClient http = HttpClient.newHttpClient();
  private final int gateway;
  private final String copyA;
  private final String copyB;
  private int byA;
  private int byB;
  private boolean both;

  Copies(int gateway) {
    this.gateway = gateway;
    this.copyA = "http://127.0.0.1:" + (gateway + 2);
    this.copyB = "http://127.0.0.1:" + (gateway + 20);
  }

  int byA() {
    return byA;
  }

  int byB() {
    return byB;
  }

  /**
   * Waits for the second copy where there is to be one.
   *
   * @throws IOException when it does not come up
   */
  void await(boolean two) throws IOException, InterruptedException {
    both = two;
    Instant until = Instant.now().plus(PATIENCE);
    while (two && !ready(copyB)) {
      if (Instant.now().isAfter(until)) {
        throw new IOException(
            "The second copy is not ready; its log is"
                + " deploy/proof/target/rolling-upgrade.second.log");
      }
      Thread.sleep(500);
    }
  }

  private boolean ready(String copy) throws InterruptedException {
    try {
      URI health = URI.create(copy + "/fitting/q/health/ready");
      HttpRequest ask = HttpRequest.newBuilder(health).timeout(Duration.ofSeconds(2)).build();
      return http.send(ask, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
    } catch (IOException e) {
      return false;
    }
  }

  JsonNode protocol() throws IOException, InterruptedException {
    return send(request(copyA + "/fitting/api/protocol").GET().build());
  }

  /** A command to fitting, by the copy whose turn it is. */
  JsonNode command(String path, Object body) throws IOException, InterruptedException {
    boolean toB = both && byA > byB;
    String copy = toB ? copyB : copyA;
    HttpRequest.Builder post =
        request(copy + "/fitting" + path).header("Content-Type", "application/json");
    JsonNode answer =
        send(post.POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body))).build());
    if (toB) {
      byB++;
    } else {
      byA++;
    }
    return answer;
  }

  void imports(String path, String csv) throws IOException, InterruptedException {
    String address = "http://127.0.0.1:" + gateway + path;
    HttpRequest.Builder post = request(address).header("Content-Type", "text/csv; charset=utf-8");
    send(post.POST(HttpRequest.BodyPublishers.ofString(csv)).build());
  }

  private static HttpRequest.Builder request(String address) {
    String login = "manager:larkfield";
    String basic = Base64.getEncoder().encodeToString(login.getBytes(StandardCharsets.UTF_8));
    return HttpRequest.newBuilder(URI.create(address))
        .header("Authorization", "Basic " + basic)
        .header("Idempotency-Key", UUID.randomUUID().toString());
  }

  /**
   * @throws Refused for any other answer than success
   */
  private JsonNode send(HttpRequest request) throws IOException, InterruptedException {
    HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() >= 300) {
      throw new Refused(request.uri() + " was answered " + answer.statusCode() + answer.body());
    }
    return answer.body().isBlank() ? JSON.nullNode() : JSON.readTree(answer.body());
  }

  /** Another answer than success. */
  static final class Refused extends IOException {
    private static final long serialVersionUID = 1L;

    Refused(String what) {
      super(what);
    }
  }
}
