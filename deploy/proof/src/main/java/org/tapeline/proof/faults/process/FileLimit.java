package org.tapeline.proof.faults.process;

import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A limit on the size of any file that the part's processes write: what is possible without a disk
 * of its own. They get "file too large" where a full disk says "no space left".
 */
final class FileLimit implements Quota {
  private final Supplier<Stream<ProcessHandle>> processes;
  private final long bytes;

  /**
   * @param processes those of the part at the moment of the call
   * @param bytes from 0; more is not written to any file
   */
  FileLimit(Supplier<Stream<ProcessHandle>> processes, long bytes) {
    this.processes = processes;
    this.bytes = bytes;
  }

  @Override
  public String how() {
    return "no file may grow beyond " + bytes + " bytes";
  }

  @Override
  public void useUp() {
    set(Long.toString(bytes));
  }

  @Override
  public void giveBack() {
    set("unlimited");
  }

  /** The soft limit alone: the hard one could not be raised again. */
  private void set(String limit) {
    processes
        .get()
        .forEach(
            process -> Shell.run("prlimit", "--pid", "" + process.pid(), "--fsize=" + limit + ":"));
  }
}
