package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The first rows of the demo's files, by what they hold: imports that would be taken. */
final class DemoCsv {
  private static final int LINES = 8;

  private DemoCsv() {}

  static Map<String, String> of(Path root) throws IOException {
    Map<String, String> files = new HashMap<>();
    for (String what : List.of("players", "charts", "helmets", "parts", "places", "travel")) {
      Path file = root.resolve("deploy/demo/larkfield-valley/" + what + ".csv");
      files.put(
          what,
          Files.readAllLines(file).stream().limit(LINES).collect(Collectors.joining("\n")) + "\n");
    }
    return files;
  }
}
