package org.tapeline.inventory.allocation;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** Reads what is weighed against what, and offers the solver. */
@Singleton
public class PolicyFile {

  @Produces
  @Singleton
  AllocationPolicy policy() {
    try (InputStream file = PolicyFile.class.getResourceAsStream("/policy/allocation.json")) {
      return EventJson.MAPPER.readValue(file, AllocationPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Produces
  @Singleton
  FlowSolver solver() {
    return new LeastCostFlow();
  }
}
