package org.tapeline.proof.fuzz.endpoint;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/** What can be wrong in a CSV file that is imported. */
final class CsvTwists {
  private static final Predicate<Endpoint> FITS = e -> e.takes("text/csv");

  private CsvTwists() {}

  static List<Twist> all() {
    return List.of(
        new Twist("a CSV cell that is odd", FITS, (d, r) -> d.bytes = cell(text(d), r)),
        new Twist("a CSV cell that is odd, again", FITS, (d, r) -> d.bytes = cell(text(d), r)),
        new Twist("a CSV cell with a date that is odd", FITS, CsvTwists::date),
        new Twist("CSV that breaks off", FITS, CsvTwists::breaksOff),
        new Twist("CSV with a byte changed", FITS, CsvTwists::changed),
        new Twist("CSV in another encoding", FITS, CsvTwists::otherEncoding),
        new Twist("CSV of another kind", FITS, (d, r) -> d.bytes = utf8("a;b\n\"x\"y,\n,,,,,\n")),
        new Twist("CSV with a column twice", FITS, CsvTwists::columnTwice),
        new Twist("CSV with no rows", FITS, (d, r) -> d.bytes = utf8(header(text(d)) + "\n")));
  }

  private static String text(Draft draft) {
    return new String(draft.bytes, StandardCharsets.UTF_8);
  }

  private static String header(String csv) {
    return csv.lines().findFirst().orElse("");
  }

  private static void date(Draft draft, RandomGenerator random) {
    draft.bytes = replaced(text(draft), random, Oddities.date(random));
  }

  private static byte[] cell(String csv, RandomGenerator random) {
    return replaced(csv, random, "\"" + Oddities.text(random).replace("\"", "\"\"") + "\"");
  }

  /** One cell of one of the first rows, the others left out. */
  private static byte[] replaced(String csv, RandomGenerator random, String value) {
    List<String> lines = csv.lines().limit(6).toList();
    int row = 1 + random.nextInt(Math.max(1, lines.size() - 1));
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",", -1);
      if (i == row) {
        cells[random.nextInt(cells.length)] = value;
      }
      out.append(String.join(",", cells)).append('\n');
    }
    return utf8(out.toString());
  }

  private static void breaksOff(Draft draft, RandomGenerator random) {
    draft.bytes = utf8(header(text(draft)) + "\n\"never closed,");
  }

  private static void changed(Draft draft, RandomGenerator random) {
    byte[] bytes = utf8(text(draft).lines().limit(4).reduce("", (a, b) -> a + b + "\n"));
    if (bytes.length > 0) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    draft.bytes = bytes;
  }

  private static void otherEncoding(Draft draft, RandomGenerator random) {
    String csv = text(draft).lines().limit(4).reduce("", (a, b) -> a + b + "\n") + "\u00fc";
    draft.bytes =
        csv.getBytes(
            random.nextBoolean() ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_16LE);
  }

  private static void columnTwice(Draft draft, RandomGenerator random) {
    String header = header(text(draft));
    draft.bytes = utf8(header + "," + header + "\n1,2\n");
  }

  private static byte[] utf8(String text) {
    return Encoded.utf8(text);
  }
}
