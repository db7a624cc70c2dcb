package org.tapeline.inventory.stock;

import java.util.Arrays;
import java.util.List;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** The moves of a part at a place as CSV, times in UTC. */
final class LedgerCsv {
  private static final List<String> HEADER =
      List.of("place", "item", "model", "at", "why", "reason", "by", "other", "amount", "balance");

  private LedgerCsv() {}

  static String of(String place, String item, List<Books.Entry> entries) {
    return CsvAnswer.text(
        HEADER,
        entries.stream()
            .map(
                e ->
                    Arrays.asList(
                        place,
                        item,
                        e.model(),
                        e.at(),
                        e.why(),
                        e.reason(),
                        e.by(),
                        e.other(),
                        e.amount(),
                        e.after()))
            .toList());
  }
}
