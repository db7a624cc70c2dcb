package org.tapeline.acceptance;

import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Map;
import java.util.UUID;
import org.tapeline.stack.demo.DemoLoader;

/**
 * The whole of Tapeline with the demo season. What runs at the address in {@code TAPELINE_ADDRESS}
 * when it is set; else a stack that {@code deploy/start} starts for these tests, with data and
 * ports of its own.
 */
final class Tapeline {
  static final Path ROOT = Path.of(System.getProperty("tapeline.root"));
  static final String PASSWORD = "larkfield";
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final HttpClient HTTP = HttpClient.newHttpClient();
  private static String address;
  private static LocalRun run;
  private static TraceReceiver traces;

  private Tapeline() {}

  /** The address of the gateway, without a slash at the end. */
  static synchronized String address() {
    if (address == null) {
      String running = System.getenv("TAPELINE_ADDRESS");
      try {
        address = running == null ? start() : withDemo(running);
      } catch (IOException | DemoLoader.LoadFailure e) {
        throw new IllegalStateException(e);
      }
    }
    return address;
  }

  /** The address of a service itself; only of a stack that runs for these tests. */
  static String serviceAddress(String service) {
    address();
    assumeThat(run).as("a stack of these tests' own").isNotNull();
    return run.serviceAddress(service);
  }

  /** Where the services of a stack that runs for these tests tell what they do. */
  static TraceReceiver traces() {
    address();
    assumeThat(traces).as("a stack of these tests' own").isNotNull();
    return traces;
  }

  static JsonNode get(String user, String path) {
    HttpResponse<String> response = send(request(user, path).build());
    if (response.statusCode() != 200) {
      throw new IllegalStateException(path + ": " + response.statusCode() + response.body());
    }
    return json(response.body());
  }

  /** How that is answered, whatever it is. */
  static int status(String user, String path) {
    return send(request(user, path).build()).statusCode();
  }

  /** Does it, with an id of its own. */
  static void post(String user, String path, Object body) {
    post(user, path, body, UUID.randomUUID());
  }

  static void post(String user, String path, Object body, UUID id) {
    sent(user, path, "application/json", JSON.valueToTree(body).toString(), id);
  }

  /** Does it, with an id of its own, and tells the answer. */
  static JsonNode does(String user, String path, Object body) {
    return json(sent(user, path, "application/json", JSON.valueToTree(body).toString()));
  }

  /** Takes a CSV file in, and tells the answer. */
  static JsonNode importing(String user, String path, String csv) {
    return json(sent(user, path, "text/csv", csv));
  }

  private static String sent(String user, String path, String type, String body) {
    return sent(user, path, type, body, UUID.randomUUID());
  }

  private static String sent(String user, String path, String type, String body, UUID id) {
    HttpRequest request =
        request(user, path)
            .header("Idempotency-Key", id.toString())
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> response = send(request);
    if (response.statusCode() / 100 != 2) {
      throw new IllegalStateException(path + ": " + response.statusCode() + response.body());
    }
    return response.body();
  }

  private static HttpRequest.Builder request(String user, String path) {
    String login =
        Base64.getEncoder()
            .encodeToString((user + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8));
    return HttpRequest.newBuilder(URI.create(address() + path))
        .header("Authorization", "Basic " + login)
        .header("Accept", "application/json");
  }

  private static HttpResponse<String> send(HttpRequest request) {
    try {
      return HTTP.send(request, HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  static JsonNode json(String text) {
    try {
      return JSON.readTree(text);
    } catch (IOException e) {
      throw new IllegalStateException("Not JSON: " + text, e);
    }
  }

  private static String withDemo(String running) throws IOException, DemoLoader.LoadFailure {
    Path marker = Files.createTempDirectory("tapeline");
    new DemoLoader(ROOT, marker, URI.create(running).getPort(), System.out::println).load();
    return running;
  }

  private static String start() throws IOException {
    traces = TraceReceiver.start();
    Map<String, String> tracing =
        Map.of(
            "OTEL_SDK_DISABLED", "false",
            "OTEL_EXPORTER_OTLP_ENDPOINT", traces.address(),
            "QUARKUS_OTEL_BSP_SCHEDULE_DELAY", "PT1S");
    run = LocalRun.start("data", tracing, "--fresh");
    return run.address();
  }
}
