package org.tapeline.notify.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.channel.Outgoing;

/** Writes a message as the gateway wants it, by the settings. */
final class TextRequest {
  private TextRequest() {}

  static HttpRequest of(TextSettings settings, Outgoing message, String words, Instant now) {
    byte[] body = body(settings, fields(settings, message, words));
    String type =
        switch (settings.form()) {
          case JSON -> "application/json";
          case FORM -> "application/x-www-form-urlencoded";
        };
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(settings.url().orElseThrow()))
            .timeout(settings.timeout())
            .method(settings.method(), HttpRequest.BodyPublishers.ofByteArray(body))
            .header("Content-Type", type)
            .header(settings.headers().idempotency(), message.key());
    settings.key().ifPresent(key -> request.header(settings.headers().key(), key));
    settings
        .signingKey()
        .map(Signatures::new)
        .ifPresent(
            signatures -> {
              String seconds = Long.toString(now.getEpochSecond());
              request.header(settings.headers().timestamp(), seconds);
              request.header(settings.headers().signature(), signatures.sign(seconds, body));
            });
    return request.build();
  }

  private static Map<String, String> fields(TextSettings settings, Outgoing message, String words) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put(settings.fields().to(), message.to());
    settings.from().ifPresent(from -> fields.put(settings.fields().from(), from));
    fields.put(settings.fields().body(), words);
    fields.put(settings.fields().reference(), message.key());
    return fields;
  }

  private static byte[] body(TextSettings settings, Map<String, String> fields) {
    return switch (settings.form()) {
      case JSON -> json(fields);
      case FORM ->
          fields.entrySet().stream()
              .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
              .collect(Collectors.joining("&"))
              .getBytes(StandardCharsets.US_ASCII);
    };
  }

  private static byte[] json(Map<String, String> fields) {
    try {
      return EventJson.MAPPER.writeValueAsBytes(fields);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Fields are text", e);
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
