package org.tapeline.notify.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.tapeline.journal.EventJson;

/**
 * What the gateway says of a message.
 *
 * @param id what the gateway calls it; empty when not said
 * @param key what we call it; empty when not said
 * @param status in the gateway's own word
 */
record Receipt(Optional<String> id, Optional<MessageKey> key, String status) {

  /**
   * Reads JSON or a form, by its first character; empty when a field is missing.
   *
   * @throws IOException when it is neither
   */
  static Optional<Receipt> read(byte[] body, TextSettings.Receipts names) throws IOException {
    Map<String, String> fields = fields(new String(body, StandardCharsets.UTF_8).strip());
    Optional<String> id = Optional.ofNullable(fields.get(names.id()));
    Optional<MessageKey> key =
        Optional.ofNullable(fields.get(names.reference())).flatMap(MessageKey::read);
    return Optional.ofNullable(fields.get(names.status()))
        .filter(status -> id.isPresent() || key.isPresent())
        .map(status -> new Receipt(id, key, status));
  }

  private static Map<String, String> fields(String text) throws IOException {
    Map<String, String> fields = new HashMap<>();
    if (text.startsWith("{")) {
      JsonNode json = EventJson.MAPPER.readTree(text);
      json.properties().forEach(f -> fields.put(f.getKey(), f.getValue().asText()));
      return fields;
    }
    for (String pair : text.split("&")) {
      String[] parts = pair.split("=", 2);
      if (parts.length == 2) {
        fields.put(decoded(parts[0]), decoded(parts[1]));
      }
    }
    return fields;
  }

  private static String decoded(String text) throws IOException {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw new IOException("Neither JSON nor a form", e);
    }
  }
}
