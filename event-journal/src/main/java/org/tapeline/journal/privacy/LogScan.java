package org.tapeline.journal.privacy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Looks at every line of the logs in a folder. */
final class LogScan {
  private LogScan() {}

  /**
   * The number of lines that were looked at.
   *
   * @throws IOException when there is no such folder or no log in it
   */
  static long run(Path folder, PersonalWords words, Findings findings) throws IOException {
    List<Path> logs;
    try (Stream<Path> files = Files.list(folder)) {
      logs = files.filter(file -> file.toString().endsWith(".log")).sorted().toList();
    }
    if (logs.isEmpty()) {
      throw new IOException("There is no log in " + folder);
    }
    long looked = 0;
    for (Path log : logs) {
      // What is no text in a log must not end the reading of it.
      try (BufferedReader lines =
          new BufferedReader(
              new InputStreamReader(Files.newInputStream(log), StandardCharsets.UTF_8))) {
        long number = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          number++;
          findings.at("log " + log.getFileName() + " line " + number, words.in(line));
        }
        looked += number;
      }
    }
    return looked;
  }
}
