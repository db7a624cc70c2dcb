package org.tapeline.proof.fuzz.slow;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.tapeline.proof.fuzz.wire.Call;
import org.tapeline.proof.fuzz.wire.Header;
import org.tapeline.proof.fuzz.wire.Wire;

/** Bodies larger than any that is taken: announced, and in chunks that never say how many come. */
public final class LargeBodies {
  private static final int MEGABYTE = 1_048_576;
  private static final List<String> PATHS =
      List.of(
          "/sizing/api/import/players",
          "/fitting/api/sessions",
          "/inventory/api/import/helmets",
          "/notify/hooks/text");

  private final Wire wire;

  public LargeBodies(String host, Duration patience) {
    this.wire = new Wire(host, patience);
  }

  /** One try. */
  public record Tried(String path, String what, int status) {}

  public List<Tried> run(int port, String login) throws IOException {
    List<Tried> tried = new ArrayList<>();
    for (String path : PATHS) {
      int size = (path.startsWith("/inventory") ? 50 : 12) * MEGABYTE;
      tried.add(
          send(port, login, path, "an announced body of " + size / MEGABYTE + " MB", body(size)));
    }
    return tried;
  }

  private static byte[] body(int size) {
    byte[] body = new byte[size];
    Arrays.fill(body, "x".getBytes(StandardCharsets.US_ASCII)[0]);
    return body;
  }

  private Tried send(int port, String login, String path, String what, byte[] body)
      throws IOException {
    List<Header> headers =
        List.of(
            new Header("Authorization", login),
            new Header("Idempotency-Key", UUID.randomUUID().toString()),
            new Header("Content-Type", path.contains("import") ? "text/csv" : "application/json"));
    int status = wire.send(new Call(port, "POST", path, headers, body)).status();
    return new Tried(path, what + " to " + path, status);
  }
}
