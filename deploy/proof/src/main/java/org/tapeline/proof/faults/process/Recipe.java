package org.tapeline.proof.faults.process;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How a process was started, read off the running process, so that it can be started again just as
 * it was.
 */
record Recipe(List<String> command, Path folder, Map<String, String> environment) {
  private static final Path WITH_ITS_PARENT = Path.of("/usr/bin/setpriv");

  Recipe {
    command = List.copyOf(command);
    environment = Map.copyOf(environment);
  }

  /**
   * @throws IOException when it does not run any more
   */
  static Recipe of(long pid) throws IOException {
    Path proc = Path.of("/proc", Long.toString(pid));
    Map<String, String> environment = new HashMap<>();
    for (String line : parts(proc.resolve("environ"))) {
      int equals = line.indexOf('=');
      if (equals > 0) {
        environment.put(line.substring(0, equals), line.substring(equals + 1));
      }
    }
    List<String> command = List.of(parts(proc.resolve("cmdline")));
    if (command.getFirst().isEmpty()) {
      throw new IOException("Process " + pid + " has ended");
    }
    return new Recipe(command, proc.resolve("cwd").toRealPath(), environment);
  }

  private static String[] parts(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8).split("\0");
  }

  /** The same with another setting. */
  Recipe with(String name, String value) {
    Map<String, String> changed = new HashMap<>(environment);
    changed.put(name, value);
    return new Recipe(command, folder, changed);
  }

  /** The same, started by another command that ends by starting this one. */
  Recipe under(String... starter) {
    List<String> longer = new ArrayList<>(List.of(starter));
    longer.addAll(command);
    return new Recipe(longer, folder, environment);
  }

  /**
   * Starts it; it ends when the calling thread does, where the system can do that.
   *
   * @param log what it says is added to this file
   */
  Process start(File log) throws IOException {
    List<String> all = new ArrayList<>();
    if (Files.isExecutable(WITH_ITS_PARENT)) {
      all.addAll(List.of(WITH_ITS_PARENT.toString(), "--pdeathsig", "TERM"));
    }
    all.addAll(command);
    ProcessBuilder builder = new ProcessBuilder(all).directory(folder.toFile());
    builder.environment().clear();
    builder.environment().putAll(environment);
    builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.appendTo(log));
    return builder.start();
  }
}
