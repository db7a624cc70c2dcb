package org.tapeline.notify.trace;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.tapeline.journal.quarkus.file.CsvAnswer;

/** Writes a table row by row as {@link CsvAnswer} does, so that a long one is never held whole. */
final class CsvWriter implements AutoCloseable {
  private final CSVPrinter printer;

  CsvWriter(OutputStream out, List<String> header) throws IOException {
    printer =
        new CSVPrinter(new OutputStreamWriter(out, StandardCharsets.UTF_8), CSVFormat.RFC4180);
    printer.printRecord(header);
  }

  /**
   * @param cells what is null becomes an empty cell
   */
  void row(List<?> cells) {
    try {
      printer.printRecord(cells.stream().map(CsvAnswer::harmless));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() throws IOException {
    printer.close(true);
  }
}
