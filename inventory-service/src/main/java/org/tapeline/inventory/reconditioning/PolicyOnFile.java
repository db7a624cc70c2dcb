package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** The policy as it stands in {@code policy/reconditioning.json}; a wrong one stops the start. */
@ApplicationScoped
public class PolicyOnFile {
  private final ReconditioningPolicy policy;

  PolicyOnFile() {
    try (InputStream file = PolicyOnFile.class.getResourceAsStream("/policy/reconditioning.json")) {
      policy = EventJson.MAPPER.readValue(file, ReconditioningPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public ReconditioningPolicy get() {
    return policy;
  }
}
