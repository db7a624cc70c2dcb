package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.Set;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.csv.CsvFile;
import org.tapeline.inventory.csv.ImportAnswer;
import org.tapeline.inventory.csv.Rows;
import org.tapeline.inventory.csv.Tally;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Cause;

/** Opening stock of parts from CSV: what the file says is what is there. */
@ApplicationScoped
public class PartImport {
  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";
  private final StockDesk stock;
  private final Places places;
  private final CompatibilityTable compatibility;

  PartImport(StockDesk stock, Places places, CompatibilityTable compatibility) {
    this.stock = stock;
    this.places = places;
    this.compatibility = compatibility;
  }

  /**
   * @param by staff id of who imports
   */
  public ImportAnswer run(String csv, String by, Cause cause) {
    Tally tally = new Tally();
    Set<String> seen = new HashSet<>();
    for (CsvFile.Row line : CsvFile.read(csv, Set.of("place", "item", "quantity")).rows()) {
      Rows row = new Rows(line);
      String place = row.text("place");
      if (!places.exists(place)) {
        row.wrong("place", "No such place. Import the places first.");
      }
      String item = row.matching("item", CODE, "Give the part's code, such as jaw-pad-15mm.");
      String model = row.matching("model", "|" + CODE, "Give the model's code, or leave it empty.");
      checkModel(row, item, model);
      int quantity = row.whole("quantity", 0, 1_000_000);
      if (!seen.add(place + " " + item + " " + model)) {
        row.wrong("item", "This part stands in the file twice for this place.");
      }
      if (row.good()) {
        tally.taken(stock.open(place, item, model, quantity, by, cause));
      } else {
        tally.rejected(row);
      }
    }
    return tally.answer();
  }

  /** Stock that is kept for a model must be a part for that model. */
  private void checkModel(Rows row, String item, String model) {
    if (!model.isEmpty() && row.good() && !compatibility.inForce().fits(item, model)) {
      row.wrong(
          "model",
          "The compatibility table does not list this part for this model. Correct the model,"
              + " or have the table changed first.");
    }
  }
}
