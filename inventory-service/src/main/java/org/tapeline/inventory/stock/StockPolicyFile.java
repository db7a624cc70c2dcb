package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** The policy in force, from {@code policy/stock-books.json}. */
@ApplicationScoped
public class StockPolicyFile {
  private static final String FILE = "/policy/stock-books.json";

  private final StockPolicy policy;

  StockPolicyFile() {
    try (InputStream file = StockPolicyFile.class.getResourceAsStream(FILE)) {
      this.policy = EventJson.MAPPER.readValue(file, StockPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public StockPolicy inForce() {
    return policy;
  }
}
