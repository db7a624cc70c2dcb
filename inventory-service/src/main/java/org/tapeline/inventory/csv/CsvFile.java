package org.tapeline.inventory.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import org.tapeline.inventory.csv.ImportAnswer.RowError;
import org.tapeline.journal.quarkus.http.Problem;

/** A CSV file with a header row, UTF-8, with or without a byte order mark. */
public final class CsvFile {
  private final List<Row> rows;

  private CsvFile(List<Row> rows) {
    this.rows = rows;
  }

  /**
   * A row.
   *
   * @param line in the file, the header being line 1
   */
  public record Row(long line, Map<String, String> values) {
    /** The value without blanks around it; empty when there is none. */
    public String get(String column) {
      String value = values.get(column);
      return value == null ? "" : value.strip();
    }

    /** Says what is wrong with a value of this row, and what to do. */
    public RowError error(String column, String message) {
      return new RowError(line, column, get(column), message);
    }
  }

  /**
   * Reads bytes as UTF-8. Spreadsheets like to write other encodings, in which names would be
   * spoilt without a word.
   *
   * @throws Problem when they are not UTF-8
   */
  public static String text(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw Problem.badRequest(
          "not-utf-8", "The file is not UTF-8. Save it as \"CSV UTF-8\" and send it again.");
    }
  }

  /**
   * @throws Problem when a needed column is missing or the file is not CSV
   */
  public static CsvFile read(String text, Set<String> needed) {
    String content = text.startsWith("\ufeff") ? text.substring(1) : text;
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(content), format)) {
      Set<String> missing = new TreeSet<>(needed);
      missing.removeAll(parser.getHeaderMap() == null ? Set.of() : parser.getHeaderNames());
      if (!missing.isEmpty()) {
        throw Problem.badRequest(
            "columns-missing",
            "The first row must name the columns. Missing: " + String.join(", ", missing) + ".");
      }
      List<Row> rows = new ArrayList<>();
      for (CSVRecord row : parser) {
        rows.add(new Row(parser.getCurrentLineNumber(), row.toMap()));
      }
      return new CsvFile(rows);
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      // What the parser says names its own classes: of no use to whoever sent the file.
      throw Problem.badRequest(
          "not-csv",
          "This is not a CSV file with a header row: a column stands there twice, a row is longer"
              + " than the header, or a quotation mark is not closed.");
    }
  }

  public List<Row> rows() {
    return rows;
  }
}
