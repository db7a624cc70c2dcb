package org.tapeline.proof.faults.process;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Short commands of the system. */
public final class Shell {
  private Shell() {}

  /**
   * What it said and how it ended.
   *
   * @param status 0 when all went well
   */
  public record Outcome(int status, String said) {
    public boolean well() {
      return status == 0;
    }
  }

  public static Outcome run(String... command) {
    return run(List.of(command));
  }

  public static Outcome run(List<String> command) {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Outcome(process.waitFor(), said);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }

  /**
   * @param name such as KILL, STOP or CONT; a process that is gone by now is left at that
   */
  static void signal(long pid, String name) {
    run("kill", "-" + name, Long.toString(pid));
  }
}
