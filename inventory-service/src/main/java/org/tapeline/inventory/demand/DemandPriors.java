package org.tapeline.inventory.demand;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.inventory.demand.DemandPrior.Share;
import org.tapeline.journal.EventJson;

/** The expected need of each item: data in {@code policy/demand-prior.json}. */
@ApplicationScoped
public class DemandPriors {
  private final DemandPrior prior;
  private final Map<String, Share> parts;

  DemandPriors() {
    try (InputStream file = DemandPriors.class.getResourceAsStream("/policy/demand-prior.json")) {
      prior = EventJson.MAPPER.readValue(file, DemandPrior.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    parts = prior.parts().stream().collect(Collectors.toMap(Share::item, s -> s));
  }

  /** Before anything was used; empty for an item of which nothing is known. */
  Optional<DemandRate> of(String item) {
    return Optional.ofNullable(item.startsWith("helmet:") ? prior.helmet() : parts.get(item))
        .map(prior::rate);
  }

  public int seasonWeeks() {
    return prior.seasonWeeks();
  }

  int memoryWeeks() {
    return prior.memoryWeeks();
  }
}
