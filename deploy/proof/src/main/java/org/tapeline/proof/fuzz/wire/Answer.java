package org.tapeline.proof.fuzz.wire;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Map;

/**
 * What came back.
 *
 * @param status 0 when the connection ended without a status line
 * @param headers by name in small letters; of several the last
 * @param whole false when the time was up before the end came
 */
public record Answer(
    int status, Map<String, String> headers, byte[] body, Duration took, boolean whole) {

  public String text() {
    return new String(body, StandardCharsets.UTF_8);
  }

  public String header(String name) {
    return headers.getOrDefault(name, "");
  }

  /** The media type without its parameters; empty when none is said. */
  public String type() {
    return header("content-type").replaceFirst(";.*", "").strip();
  }

  public boolean refused() {
    return status >= 400;
  }
}
