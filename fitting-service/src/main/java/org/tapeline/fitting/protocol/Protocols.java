package org.tapeline.fitting.protocol;

import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** The protocol in force, read and checked when the service starts: with a bad one it does not. */
@Startup
@ApplicationScoped
public class Protocols {
  private static final String BUILT_IN = "/protocol/youth-football.json";

  private final Protocol inForce = read(BUILT_IN);

  public Protocol inForce() {
    return inForce;
  }

  /** The protocol that comes with the service. */
  public static Protocol builtIn() {
    return read(BUILT_IN);
  }

  private static Protocol read(String resource) {
    try (InputStream in = Protocols.class.getResourceAsStream(resource)) {
      return EventJson.MAPPER.readValue(in, ProtocolFile.class).read();
    } catch (IOException e) {
      throw new UncheckedIOException("The fit protocol " + resource + " cannot be used", e);
    }
  }
}
