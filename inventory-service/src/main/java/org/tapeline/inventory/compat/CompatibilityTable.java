package org.tapeline.inventory.compat;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** The table in force, from {@code policy/part-compatibility.json}. */
@ApplicationScoped
public class CompatibilityTable {
  private static final String FILE = "/policy/part-compatibility.json";

  private final PartCompatibility table;

  CompatibilityTable() {
    try (InputStream file = CompatibilityTable.class.getResourceAsStream(FILE)) {
      this.table = EventJson.MAPPER.readValue(file, PartCompatibility.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public PartCompatibility inForce() {
    return table;
  }
}
