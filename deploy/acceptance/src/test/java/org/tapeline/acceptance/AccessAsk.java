package org.tapeline.acceptance;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Asks for a row of the matrix as somebody. Whoever should be let in sends no command id, so that
 * nothing is done; whoever should be kept out sends everything, so that nothing but the guard
 * stands in the way.
 */
final class AccessAsk {
  private static final Pattern VARIABLE = Pattern.compile("\\{([A-Za-z]+)(?:=([^}]*))?}");
  private static final HttpClient HTTP =
      HttpClient.newBuilder()
          .version(HttpClient.Version.HTTP_1_1)
          .followRedirects(HttpClient.Redirect.NEVER)
          .build();
  private static final int MOST = 2_000_000;

  private AccessAsk() {}

  /** How it was answered; the text of what is no text is empty. */
  record Answer(int status, String location, String text) {
    boolean asksToSignIn() {
      return status == 401 || status == 302 && location.contains("/sign-in");
    }

    /** Less what the asker said first: a refusal names the address that was asked for. */
    Answer without(Collection<String> said) {
      String less = text;
      for (String word : said) {
        less = less.replace(word, "");
      }
      return new Answer(status, location, less);
    }

    /** Refused, or answered as if there were nothing. */
    boolean hides() {
      return status == 403
          || status == 404
          || status == 200 && (text.isBlank() || text.strip().equals("[]"));
    }
  }

  static Answer ask(
      AccessRow row, AccessRole role, Map<String, String> values, boolean shouldBeLetIn) {
    String command = shouldBeLetIn ? "" : UUID.randomUUID().toString();
    String path = filled(row.path(), values, command);
    String sends = filled(row.sends(), values, command);
    String query = sends.startsWith("?") ? sends.split(" ", 2)[0] : "";
    String body = sends.substring(query.length()).strip();
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(Tapeline.address() + path + query))
            .timeout(Duration.ofSeconds(30));
    role.user().ifPresent(user -> request.header("Authorization", Raw.login(user)));
    boolean program = path.contains("/api/");
    request.header("Accept", program ? "application/json, */*;q=0.5" : "text/html, */*;q=0.5");
    if (program && row.changes() && !shouldBeLetIn) {
      request.header("Idempotency-Key", command);
    }
    return send(request.method(row.method(), publisher(request, body)).build());
  }

  private static HttpRequest.BodyPublisher publisher(HttpRequest.Builder request, String body) {
    if (body.isEmpty()) {
      return HttpRequest.BodyPublishers.noBody();
    }
    String[] kind = body.split(" ", 2);
    String content = kind.length > 1 ? kind[1] : "";
    return switch (kind[0]) {
      case "form" -> typed(request, "application/x-www-form-urlencoded", content);
      case "json" -> typed(request, "application/json", content);
      case "csv" -> typed(request, "text/csv", content);
      case "file" -> typed(request, "application/octet-stream", content);
      case "multipart" ->
          typed(
              request,
              "multipart/form-data; boundary=part",
              "--part\r\nContent-Disposition: form-data; name=\"mode\"\r\n\r\nall-or-none\r\n"
                  + "--part--\r\n");
      default -> throw new IllegalArgumentException("What is sent begins with its kind: " + body);
    };
  }

  private static HttpRequest.BodyPublisher typed(
      HttpRequest.Builder request, String type, String content) {
    request.header("Content-Type", type);
    return HttpRequest.BodyPublishers.ofString(content);
  }

  /** A variable has the value that the row names, else the subject's. */
  private static String filled(String text, Map<String, String> values, String command) {
    Matcher variable = VARIABLE.matcher(text);
    StringBuilder filled = new StringBuilder();
    while (variable.find()) {
      String name = variable.group(1);
      String value =
          variable.group(2) != null
              ? variable.group(2)
              : name.equals("command") ? command : values.get(name);
      if (value == null) {
        throw new IllegalArgumentException("No value to try for " + variable.group() + ": " + text);
      }
      variable.appendReplacement(filled, Matcher.quoteReplacement(value));
    }
    return variable.appendTail(filled).toString();
  }

  private static Answer send(HttpRequest request) {
    try {
      HttpResponse<InputStream> response =
          HTTP.send(request, HttpResponse.BodyHandlers.ofInputStream());
      String type = response.headers().firstValue("Content-Type").orElse("");
      String location = response.headers().firstValue("Location").orElse("");
      try (InputStream in = response.body()) {
        return new Answer(response.statusCode(), location, text(type, in));
      }
    } catch (IOException e) {
      throw new IllegalStateException(request.method() + " " + request.uri(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** A stream of events never ends; that it began is the answer. */
  private static String text(String type, InputStream in) throws IOException {
    if (type.startsWith("text/event-stream")) {
      return "a stream";
    }
    String text = new String(in.readNBytes(MOST), StandardCharsets.UTF_8);
    boolean readable = type.startsWith("text/") || type.contains("json") || type.isEmpty();
    return readable ? text : "not a text";
  }
}
