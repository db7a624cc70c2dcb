package org.tapeline.stack.demo;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.UUID;

/** Calls the services as anybody could, through the gateway. */
final class DemoHttp {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String address;
  private final HttpClient http = HttpClient.newHttpClient();

  DemoHttp(String address) {
    this.address = address;
  }

  JsonNode get(String user, String path) throws IOException {
    return send(user, path, request(user, path).GET().build());
  }

  /** The command's id follows from its name, so that loading again does nothing twice. */
  JsonNode post(String user, String command, String path, Object body) throws IOException {
    return send(
        user,
        path,
        request(user, path)
            .header("Idempotency-Key", id(command).toString())
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(body)))
            .build());
  }

  JsonNode importCsv(String user, String command, String path, String csv) throws IOException {
    return send(
        user,
        path,
        request(user, path)
            .header("Idempotency-Key", id(command).toString())
            .header("Content-Type", "text/csv; charset=utf-8")
            .POST(HttpRequest.BodyPublishers.ofString(csv))
            .build());
  }

  private HttpRequest.Builder request(String user, String path) {
    String login = user + ":larkfield";
    String basic = Base64.getEncoder().encodeToString(login.getBytes(StandardCharsets.UTF_8));
    return HttpRequest.newBuilder(URI.create(address + path))
        .header("Authorization", "Basic " + basic)
        .header("Accept", "application/json");
  }

  private static UUID id(String command) {
    return UUID.nameUUIDFromBytes(("demo/" + command).getBytes(StandardCharsets.UTF_8));
  }

  private JsonNode send(String user, String path, HttpRequest request) throws IOException {
    try {
      HttpResponse<String> response = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (response.statusCode() >= 300) {
        throw new Refused(response.statusCode(), user, path, response.body());
      }
      return response.body().isBlank() ? JSON.nullNode() : JSON.readTree(response.body());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
  }

  /** An answer other than success. */
  static final class Refused extends IOException {
    private static final long serialVersionUID = 1L;

    private final int status;

    Refused(int status, String user, String path, String body) {
      super(path + " as " + user + " was answered " + status + ": " + body);
      this.status = status;
    }

    int status() {
      return status;
    }
  }
}
