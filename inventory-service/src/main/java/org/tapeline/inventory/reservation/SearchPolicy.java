package org.tapeline.inventory.reservation;

import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** Reads the weights once; the service does not start with wrong ones. */
@Singleton
public class SearchPolicy {

  @Produces
  @Singleton
  SearchWeights weights() {
    return read("/policy/search.json");
  }

  static SearchWeights read(String resource) {
    try (InputStream file = SearchPolicy.class.getResourceAsStream(resource)) {
      return EventJson.MAPPER.readValue(file, SearchWeights.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
