package org.tapeline.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The players of the demo season, as their file has them. */
final class DemoRoster {
  private static final Path FILE =
      Tapeline.ROOT.resolve("deploy/demo/larkfield-valley/players.csv");

  private DemoRoster() {}

  /** The address of a player's first guardian; empty for somebody who came later. */
  static Optional<String> guardianOf(String number) {
    List<String> rows = lines();
    int email = List.of(rows.getFirst().split(",")).indexOf("guardian_email");
    return rows.stream()
        .map(row -> row.split(","))
        .filter(cells -> cells[0].equals(number))
        .map(cells -> cells[email])
        .findFirst();
  }

  private static List<String> lines() {
    try {
      return Files.readAllLines(FILE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
