package org.tapeline.journal.quarkus.file;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table as a CSV file for a spreadsheet: UTF-8, no byte order mark, comma, CR LF (RFC 4180). Text
 * that a spreadsheet would take for a formula gets an apostrophe before it; numbers stay numbers.
 */
public final class CsvAnswer {
  private static final String STARTS_A_FORMULA = "=+-@\t\r";

  private CsvAnswer() {}

  /**
   * @param name the file's name without its ending: small letters, digits and hyphens
   * @param rows cells in the order of the header; nothing and what is null become an empty cell
   * @throws IllegalArgumentException when a row has other cells than the header
   */
  public static Response of(String name, List<String> header, Iterable<? extends List<?>> rows) {
    if (!name.matches("[a-z0-9-]{1,80}")) {
      throw new IllegalArgumentException("Not a name for a file: " + name);
    }
    return Response.ok(text(header, rows))
        .header(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8; header=present")
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + ".csv\"")
        .build();
  }

  /** The same as text. */
  public static String text(List<String> header, Iterable<? extends List<?>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(header);
      for (List<?> row : rows) {
        if (row.size() != header.size()) {
          throw new IllegalArgumentException("Not one cell for each column: " + row);
        }
        printer.printRecord(row.stream().map(CsvAnswer::harmless));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** Numbers stay numbers; text that would be a formula gets its apostrophe. */
  public static Object harmless(Object cell) {
    if (cell instanceof Number) {
      return cell;
    }
    String text = cell == null ? "" : cell.toString();
    boolean formula = !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
