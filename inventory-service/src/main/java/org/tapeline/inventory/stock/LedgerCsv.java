package org.tapeline.inventory.stock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The moves of a part at a place as CSV, times in UTC. */
final class LedgerCsv {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setHeader(
              "place", "item", "model", "at", "why", "reason", "by", "other", "amount", "balance")
          .get();

  private LedgerCsv() {}

  static String of(String place, String item, List<Books.Entry> entries) {
    StringBuilder csv = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(csv, FORMAT)) {
      for (Books.Entry e : entries) {
        printer.printRecord(
            place,
            item,
            e.model(),
            e.at(),
            e.why(),
            e.reason(),
            e.by(),
            e.other(),
            e.amount(),
            e.after());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return csv.toString();
  }
}
