package org.tapeline.proof.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.stack.launch.Ports;

/**
 * The Tapeline that is tried: what {@code deploy/start} runs on this machine, with the demo's
 * users.
 */
public final class Target {
  public static final List<String> SERVICES = List.of("sizing", "fitting", "inventory", "notify");

  /** In the order in which they are asked for what they may do. */
  public static final List<String> USERS =
      List.of("manager", "fitter.north", "depot", "coach.hawks", "");

  private static final String PASSWORD = "larkfield";
  private static final ObjectMapper JSON = new ObjectMapper();

  private final URI address;

  /** Without an offer of HTTP/2: on the way up to it, frames were read wrongly now and then. */
  private final HttpClient http =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  public Target(URI address) {
    this.address = address;
  }

  public String host() {
    return address.getHost();
  }

  public Ports ports() {
    return Ports.from(address.getPort());
  }

  /** Where the service itself listens, behind the gateway. */
  public int port(String service) {
    return address.getPort() + 1 + SERVICES.indexOf(service);
  }

  /** Value of the Authorization header; empty for nobody. */
  public static String login(String user) {
    String pair = user + ":" + PASSWORD;
    return user.isEmpty()
        ? ""
        : "Basic " + Base64.getEncoder().encodeToString(pair.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * @throws IOException when it is not answered with 200 and JSON
   */
  public JsonNode get(String path) throws IOException {
    return JSON.readTree(send(request(path).header("Accept", "application/json").build()));
  }

  /**
   * The OpenAPI document of a service, which the gateway does not pass on.
   *
   * @throws IOException when it is not answered with 200 and JSON
   */
  public JsonNode description(String service) throws IOException {
    String own = "http://" + host() + ":" + port(service);
    return get(own + "/" + service + "/q/openapi?format=json");
  }

  public String page(String path) throws IOException {
    return send(request(path).header("Accept", "text/html").build());
  }

  /** Sends a command with an id of its own, and tells the id. */
  public UUID post(String path, String type, String body) throws IOException {
    UUID id = UUID.randomUUID();
    send(posted(path, id, type, body));
    return id;
  }

  /**
   * A command that says something back.
   *
   * @throws IOException when it is not answered with 2xx and JSON
   */
  public JsonNode command(String path, Map<String, Object> body) throws IOException {
    String json = JSON.writeValueAsString(body);
    return JSON.readTree(send(posted(path, UUID.randomUUID(), "application/json", json)));
  }

  private HttpRequest posted(String path, UUID id, String type, String body) {
    return request(path)
        .header("Idempotency-Key", id.toString())
        .header("Content-Type", type)
        .POST(HttpRequest.BodyPublishers.ofString(body))
        .build();
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(address.resolve(path))
        .header("Authorization", login(USERS.getFirst()));
  }

  private String send(HttpRequest request) throws IOException {
    try {
      HttpResponse<String> response = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (response.statusCode() / 100 != 2) {
        throw new IOException(
            request.uri() + " was answered " + response.statusCode() + ": " + response.body());
      }
      return response.body();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
  }
}
