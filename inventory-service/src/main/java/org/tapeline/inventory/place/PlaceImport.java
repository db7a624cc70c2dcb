package org.tapeline.inventory.place;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.inventory.csv.CsvFile;
import org.tapeline.inventory.csv.ImportAnswer;
import org.tapeline.inventory.csv.Rows;
import org.tapeline.inventory.csv.Tally;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.journal.Cause;

/** Places and the ways between them from CSV. */
@ApplicationScoped
public class PlaceImport {
  public static final String CODE = "[A-Z0-9-]{2,30}";
  private final Places places;

  PlaceImport(Places places) {
    this.places = places;
  }

  public ImportAnswer places(String csv, Cause cause) {
    Tally tally = new Tally();
    Set<String> changed = new TreeSet<>();
    Set<String> seen = new HashSet<>();
    Set<String> columns = Set.of("code", "name", "kind", "altitude_m", "time_zone");
    for (CsvFile.Row line : CsvFile.read(csv, columns).rows()) {
      Rows row = new Rows(line);
      Place place = place(row);
      if (row.good() && !seen.add(place.code())) {
        row.wrong("code", "This place stands in the file twice.");
      }
      if (row.good()) {
        boolean change = places.keep(place);
        tally.taken(change);
        if (change) {
          changed.add(place.code());
        }
      } else {
        tally.rejected(row);
      }
    }
    changed.forEach(code -> places.list(code, cause));
    return tally.answer();
  }

  private static Place place(Rows row) {
    return new Place(
        row.matching("code", CODE, "Give a code of 2 to 30 capital letters, digits or hyphens."),
        row.matching("name", ".{1,120}", "Give the place a name."),
        row.matching("kind", "field|depot", "Write field or depot."),
        altitude(row),
        zone(row));
  }

  private static BigDecimal altitude(Rows row) {
    try {
      BigDecimal metres = new BigDecimal(row.text("altitude_m"));
      if (metres.doubleValue() >= -430 && metres.doubleValue() <= 6000) {
        return metres;
      }
    } catch (NumberFormatException e) {
      // Said below, as for a number out of range.
    }
    row.wrong("altitude_m", "Give metres above sea level, from -430 to 6000.");
    return BigDecimal.ZERO;
  }

  private static String zone(Rows row) {
    String zone = row.text("time_zone");
    if (!ZoneId.getAvailableZoneIds().contains(zone)) {
      row.wrong("time_zone", "Give a time zone such as America/Denver.");
    }
    return zone;
  }

  /** A way holds in both directions, unless the file gives both. */
  public ImportAnswer travel(String csv, Cause cause) {
    Tally tally = new Tally();
    Set<String> changed = new TreeSet<>();
    var lines = CsvFile.read(csv, Set.of("from", "to", "minutes")).rows();
    Map<String, Integer> given = new HashMap<>();
    lines.forEach(line -> given.merge(line.get("from") + ">" + line.get("to"), 1, Integer::sum));
    for (CsvFile.Row line : lines) {
      Rows row = new Rows(line);
      String from = known(row, "from");
      String to = known(row, "to");
      int minutes = row.whole("minutes", 0, 10080);
      if (from.equals(to)) {
        row.wrong("to", "Give two different places.");
      }
      if (given.get(from + ">" + to) != null && given.get(from + ">" + to) > 1) {
        row.wrong("to", "This way stands in the file twice.");
      }
      if (!row.good()) {
        tally.rejected(row);
        continue;
      }
      boolean there = places.keepWay(from, to, minutes);
      boolean back = !given.containsKey(to + ">" + from) && places.keepWay(to, from, minutes);
      tally.taken(there || back);
      if (there) {
        changed.add(from);
      }
      if (back) {
        changed.add(to);
      }
    }
    changed.forEach(code -> places.list(code, cause));
    return tally.answer();
  }

  private String known(Rows row, String column) {
    String code = row.text(column);
    if (!places.exists(code)) {
      row.wrong(column, "No such place. Import the places first.");
    }
    return code;
  }
}
