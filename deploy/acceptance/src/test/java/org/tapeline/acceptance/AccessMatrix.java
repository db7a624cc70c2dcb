package org.tapeline.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Who may do what, as people decided and reviewed it; and how {@code docs/access.md} shows it. */
final class AccessMatrix {
  private static final Path FILE =
      Tapeline.ROOT.resolve("deploy/acceptance/src/test/resources/access-matrix.txt");
  static final List<String> SERVICES = List.of("sizing", "fitting", "inventory", "notify");

  private final List<AccessRow> rows;

  private AccessMatrix(List<AccessRow> rows) {
    this.rows = rows;
  }

  static AccessMatrix load() {
    try {
      return new AccessMatrix(
          Files.readAllLines(FILE).stream()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .map(AccessRow::of)
              .toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<AccessRow> rows() {
    return rows;
  }

  /** A table for each service. */
  String markdown() {
    return SERVICES.stream().map(this::table).collect(Collectors.joining("\n"));
  }

  private String table(String service) {
    String lines =
        rows.stream()
            .filter(row -> row.service().equals(service))
            .map(row -> "| `" + row.endpoint() + "` | " + row.shownCells() + " |\n")
            .collect(Collectors.joining());
    return "### "
        + service
        + "\n\n| endpoint | nobody | coach | fitter | warehouse | manager |\n"
        + "|---|---|---|---|---|---|\n"
        + lines;
  }
}
