package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.proof.fuzz.wire.Call;
import org.tapeline.proof.fuzz.wire.Header;

/** A request that can still be changed, in the parts of which it is made. */
public final class Draft {
  /** Writes half a surrogate pair too, which is no text at all. */
  private static final JsonMapper JSON =
      JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();

  private static final String SIGNATURE = "X-Signature";

  final Endpoint endpoint;
  final UUID commandId = UUID.randomUUID();
  final Map<String, String> path = new LinkedHashMap<>();
  final List<Map.Entry<String, String>> query = new ArrayList<>();
  final List<Map.Entry<String, String>> form = new ArrayList<>();
  final List<Header> headers = new ArrayList<>();
  String method;
  String contentType = "";
  JsonNode json;

  /** When it is set, this is the body, whatever else is. */
  byte[] bytes;

  /** When it is set, this stands for path and query, as it is. */
  String target;

  /** When it is set, it signs what is sent in the end. */
  Signing signing;

  /** Not even HTTP: any end of the connection will do, as long as it ends. */
  boolean broken;

  Draft(Endpoint endpoint) {
    this.endpoint = endpoint;
    this.method = endpoint.method();
  }

  void header(String name, String value) {
    headers.removeIf(header -> header.name().equalsIgnoreCase(name));
    headers.add(new Header(name, value));
  }

  public UUID commandId() {
    return commandId;
  }

  public boolean broken() {
    return broken;
  }

  byte[] body() {
    if (bytes != null) {
      return bytes;
    }
    if (json != null) {
      return json().getBytes(StandardCharsets.US_ASCII);
    }
    if (contentType.startsWith("multipart/form-data")) {
      return Encoded.multipart(form);
    }
    return contentType.isEmpty() ? new byte[0] : Encoded.form(form);
  }

  String json() {
    try {
      return JSON.writeValueAsString(json);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A tree can be written", e);
    }
  }

  /**
   * @param login value of the Authorization header; empty for nobody
   */
  public Call call(int port, String login) {
    List<Header> all = new ArrayList<>(headers);
    if (!login.isEmpty() && all.stream().noneMatch(h -> h.name().equals("Authorization"))) {
      all.add(new Header("Authorization", login));
    }
    if (!contentType.isEmpty()) {
      all.add(new Header("Content-Type", contentType));
    }
    byte[] sent = body();
    if (signing != null && all.stream().noneMatch(h -> h.name().equals(SIGNATURE))) {
      String seconds = Long.toString(System.currentTimeMillis() / 1000);
      all.add(new Header("X-Timestamp", seconds));
      all.add(new Header(SIGNATURE, signing.of(seconds, sent)));
    }
    return new Call(port, method, target(), all, sent);
  }

  private String target() {
    if (target != null) {
      return target;
    }
    String said = endpoint.path();
    for (Map.Entry<String, String> part : path.entrySet()) {
      said = said.replace("{" + part.getKey() + "}", Encoded.percent(part.getValue()));
    }
    if (query.isEmpty()) {
      return said;
    }
    return said + "?" + new String(Encoded.form(query), StandardCharsets.US_ASCII);
  }
}
