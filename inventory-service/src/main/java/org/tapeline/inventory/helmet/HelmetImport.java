package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.inventory.csv.CsvFile;
import org.tapeline.inventory.csv.ImportAnswer;
import org.tapeline.inventory.csv.Rows;
import org.tapeline.inventory.csv.Tally;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Cause;

/** Helmets from CSV. A tag that is known already with the same model and size changes nothing. */
@ApplicationScoped
public class HelmetImport {
  private static final Set<String> COLUMNS =
      Set.of("model", "size", "lot", "manufactured_on", "place");
  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  private final HelmetDesk desk;
  private final HelmetTags tags;
  private final Places places;
  private final Database database;
  private final Clock clock;

  HelmetImport(HelmetDesk desk, HelmetTags tags, Places places, Database database, Clock clock) {
    this.desk = desk;
    this.tags = tags;
    this.places = places;
    this.database = database;
    this.clock = clock;
  }

  public ImportAnswer run(String csv, Cause cause) {
    Tally tally = new Tally();
    Set<String> seen = new HashSet<>();
    Map<String, Integer> alike = new HashMap<>();
    for (CsvFile.Row line : CsvFile.read(csv, COLUMNS).rows()) {
      Rows row = new Rows(line);
      Receive receive = receive(row);
      String tag = row.text("tag");
      if (!tag.isEmpty()) {
        checkTag(row, tag, receive, seen);
      }
      if (!row.good()) {
        tally.rejected(row);
      } else if (tag.isEmpty()) {
        tally.taken(takeUntagged(receive, alike, cause));
      } else {
        tally.taken(takeTagged(tag, receive, cause));
      }
    }
    return tally.answer();
  }

  private Receive receive(Rows row) {
    String model = row.matching("model", CODE, "Give the model's code, such as model-a.");
    String size = row.matching("size", CODE, "Give the size, such as youth-medium.");
    String lot =
        row.matching("lot", "[A-Za-z0-9./-]{1,40}", "Give the lot as printed on the label.");
    Optional<LocalDate> made = row.date("manufactured_on");
    if (made.isEmpty() && row.text("manufactured_on").isEmpty()) {
      row.wrong("manufactured_on", "Give the date of manufacture.");
    }
    if (made.filter(day -> day.isAfter(LocalDate.now(clock.withZone(ZoneOffset.UTC))))
        .isPresent()) {
      row.wrong("manufactured_on", "This day is still to come.");
    }
    Optional<LocalDate> until = row.date("certified_until");
    if (!places.exists(row.text("place"))) {
      row.wrong("place", "No such place. Import the places first.");
    }
    return new Receive(
        model, size, lot, made.orElse(LocalDate.EPOCH), until, row.text("place"), clock.instant());
  }

  private void checkTag(Rows row, String tag, Receive receive, Set<String> seen) {
    try {
      new AssetTag(tag);
    } catch (IllegalArgumentException e) {
      row.wrong("tag", e.getMessage());
      return;
    }
    if (!seen.add(tag)) {
      row.wrong("tag", "This tag stands in the file twice.");
    }
    known(tag)
        .filter(same -> !same.equals(receive.model() + " " + receive.size()))
        .ifPresent(other -> row.wrong("tag", "This tag is on another helmet: " + other + "."));
  }

  private Optional<String> known(String tag) {
    return database.first(
        "select model || ' ' || size from helmet where tag = ?", row -> row.getString(1), tag);
  }

  private boolean takeTagged(String tag, Receive receive, Cause cause) {
    if (known(tag).isPresent()) {
      return false;
    }
    desk.run(tag, receive, cause.step("receive-" + tag));
    return true;
  }

  /** The first row that reads so, the second ... are different helmets, and stay the same ones. */
  private boolean takeUntagged(Receive r, Map<String, Integer> alike, Cause cause) {
    String line =
        String.join(",", r.model(), r.size(), r.lot(), r.manufacturedOn().toString(), r.place());
    int ordinal = alike.merge(line, 1, Integer::sum);
    boolean known =
        database
            .first(
                "select 1 from helmet_import where line = ? and ordinal = ?",
                row -> 1,
                line,
                ordinal)
            .isPresent();
    if (known) {
      return false;
    }
    String tag = tags.next().value();
    database.change("insert into helmet_import values (?, ?, ?)", line, ordinal, tag);
    desk.run(tag, r, cause.step("receive-" + tag));
    return true;
  }
}
