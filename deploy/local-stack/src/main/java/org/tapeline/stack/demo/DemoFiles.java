package org.tapeline.stack.demo;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads the demo's own files. */
final class DemoFiles {
  private DemoFiles() {}

  static List<Map<String, String>> rows(Path file) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (Reader reader = Files.newBufferedReader(file);
        CSVParser parser = CSVParser.parse(reader, format)) {
      return parser.stream().map(CSVRecord::toMap).toList();
    }
  }

  /** The values of a column, each once, in the order of the file. */
  static List<String> values(Path file, String column) throws IOException {
    return rows(file).stream().map(row -> row.get(column)).distinct().toList();
  }

  /** The values of a column in the rows whose other column has that value. */
  static List<String> column(Path file, String column, String where, String is) throws IOException {
    return rows(file).stream()
        .filter(row -> is.equals(row.get(where)))
        .map(row -> row.get(column))
        .toList();
  }
}
