package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.TreeSet;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.compat.PartCompatibility;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Words;

/** The parts to choose from: those that were ever booked, and those that fit some model. */
@ApplicationScoped
public class PartList {
  private final Database database;
  private final CompatibilityTable compatibility;

  PartList(Database database, CompatibilityTable compatibility) {
    this.database = database;
    this.compatibility = compatibility;
  }

  /**
   * A part.
   *
   * @param value item and model with a bar between
   */
  public record Part(String value, String said) implements Comparable<Part> {
    static Part of(String item, String model) {
      String kept = model.isEmpty() ? "any model" : Words.model(model);
      return new Part(item + "|" + model, Words.code(item) + ", " + kept);
    }

    @Override
    public int compareTo(Part other) {
      return value.compareTo(other.value);
    }
  }

  List<Part> all() {
    TreeSet<Part> parts =
        new TreeSet<>(
            database.list(
                "select distinct item, model from ledger_entry",
                row -> Part.of(row.getString(1), row.getString(2))));
    for (PartCompatibility.Part part : compatibility.inForce().parts()) {
      if (part.acrossModels()) {
        parts.add(Part.of(part.item(), Shelf.ANY));
      } else {
        part.fits().forEach(model -> parts.add(Part.of(part.item(), model)));
      }
    }
    return List.copyOf(parts);
  }
}
