package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
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

/** Requests with the very headers that a test wants, and answers as they come. */
final class Raw {
  private static final HttpClient HTTP =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .followRedirects(HttpClient.Redirect.NEVER)
          .build();
  private static final String FORM = "application/x-www-form-urlencoded";

  private Raw() {}

  /** How it was answered. */
  record Answer(HttpResponse<InputStream> response) {
    int status() {
      return response.statusCode();
    }

    String header(String name) {
      return response.headers().firstValue(name).orElse("");
    }

    String type() {
      return header("Content-Type").replaceFirst(";.*", "");
    }

    List<String> cookies() {
      return response.headers().allValues("Set-Cookie");
    }

    /** The session that it gives, as a browser sends it back; empty when it gives none. */
    String session() {
      return cookies().stream()
          .filter(cookie -> cookie.startsWith(SESSION))
          .map(cookie -> cookie.substring(0, cookie.indexOf(';')))
          .findFirst()
          .orElse("");
    }
  }

  /** With what the value of a session begins. */
  static final String SESSION = "quarkus-credential=";

  static Answer get(String path, Map<String, String> headers) {
    return send(request(path, headers).GET());
  }

  static Answer post(String path, Map<String, String> headers, String form) {
    return send(
        request(path, headers)
            .header("Content-Type", FORM)
            .POST(HttpRequest.BodyPublishers.ofString(form)));
  }

  /** The headers of somebody who signs in with every request. */
  static String login(String user) {
    String both = user + ":" + Tapeline.PASSWORD;
    return "Basic " + Base64.getEncoder().encodeToString(both.getBytes(StandardCharsets.UTF_8));
  }

  /** Signs in by the form, as a browser does that sends these headers along. */
  static Answer signIn(String user, Map<String, String> headers) {
    String form = "j_username=" + user + "&j_password=" + Tapeline.PASSWORD;
    return post("/sizing/j_security_check", headers, form);
  }

  /** A page as its reader gets it. */
  static String page(String user, String path) {
    Map<String, String> headers = Map.of("Authorization", login(user), "Accept", "text/html");
    return text(request(path, headers).GET());
  }

  /** A page as somebody who is not signed in gets it. */
  static String page(String path) {
    return text(request(path, Map.of("Accept", "text/html")).GET());
  }

  /** Does it with that body, and tells the id that it was given. */
  static UUID done(String user, String path, String type, byte[] body) {
    UUID id = UUID.randomUUID();
    mustBeDone(
        send(
            request(path, command(user, id))
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofByteArray(body))),
        path);
    return id;
  }

  static void delete(String user, String path) {
    mustBeDone(send(request(path, command(user, UUID.randomUUID())).DELETE()), path);
  }

  private static Map<String, String> command(String user, UUID id) {
    return Map.of("Authorization", login(user), "Idempotency-Key", id.toString());
  }

  private static void mustBeDone(Answer answer, String path) {
    if (answer.status() / 100 != 2) {
      throw new IllegalStateException(path + ": " + answer.status());
    }
  }

  /** How a service describes its endpoints, asked at its own port. */
  static JsonNode described(String service) {
    Ports ports = Ports.from(URI.create(Tapeline.address()).getPort());
    int port =
        switch (service) {
          case "sizing" -> ports.sizing();
          case "fitting" -> ports.fitting();
          case "inventory" -> ports.inventory();
          case "notify" -> ports.notices();
          default -> throw new IllegalArgumentException(service);
        };
    URI address = URI.create("http://localhost:" + port + "/" + service + "/q/openapi");
    return Tapeline.json(
        text(HttpRequest.newBuilder(address).header("Accept", "application/json").GET()));
  }

  private static HttpRequest.Builder request(String path, Map<String, String> headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(Tapeline.address() + path));
    headers.forEach(request::header);
    return request;
  }

  private static String text(HttpRequest.Builder request) {
    try {
      return HTTP.send(request.build(), HttpResponse.BodyHandlers.ofString()).body();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** The body is left where it is: a stream of events has no end. */
  private static Answer send(HttpRequest.Builder request) {
    try {
      HttpResponse<InputStream> response =
          HTTP.send(request.build(), HttpResponse.BodyHandlers.ofInputStream());
      response.body().close();
      return new Answer(response);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
