package org.tapeline.inventory.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The ledger for a spreadsheet")
class LedgerCsvTest {
  @Test
  @DisplayName("shows a reason that looks like a formula as text, and what went as a number")
  void noFormula() {
    Books.Entry entry =
        new Books.Entry(
            7,
            Instant.parse("2026-08-01T10:00:00Z"),
            "counted",
            "=HYPERLINK(\"x\")",
            "@depot",
            "model-a",
            "+variance",
            -3,
            4);
    assertThat(LedgerCsv.of("NORTH", "valve", List.of(entry)))
        .endsWith(
            "\r\nNORTH,valve,model-a,2026-08-01T10:00:00Z,counted,\"'=HYPERLINK(\"\"x\"\")\","
                + "'@depot,'+variance,-3,4\r\n");
  }
}
