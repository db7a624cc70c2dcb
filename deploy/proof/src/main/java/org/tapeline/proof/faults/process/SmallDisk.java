package org.tapeline.proof.faults.process;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A disk of its own in memory, which another file fills. Only root may make one. */
final class SmallDisk implements Quota, AutoCloseable {
  private static final String SIZE = "1200m";
  private static final int CHUNK = 1 << 20;

  private final Path folder;

  private SmallDisk(Path folder) {
    this.folder = folder;
  }

  /** Empty when this machine does not let us. */
  static Optional<SmallDisk> mount(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String options = "size=" + SIZE + ",mode=0700";
    return Shell.run("mount", "-t", "tmpfs", "-o", options, "tapeline", folder.toString()).well()
        ? Optional.of(new SmallDisk(folder))
        : Optional.empty();
  }

  /** A run that was killed may have left one behind. */
  static void unmount(Path folder) {
    if (Shell.run("mountpoint", "-q", folder.toString()).well()) {
      Shell.run("umount", "--lazy", folder.toString());
    }
  }

  @Override
  public String how() {
    return "a disk of " + SIZE + " is filled";
  }

  @Override
  public void useUp() {
    for (int size = CHUNK; size >= 512; size /= 2) {
      fill(new byte[size]);
    }
  }

  /** Until the disk is full, which is said by an exception. */
  private void fill(byte[] zeros) {
    try (OutputStream out = Files.newOutputStream(filler(zeros.length))) {
      while (true) {
        out.write(zeros);
      }
    } catch (IOException full) {
      // It is what we are here for.
      return;
    }
  }

  private Path filler(int size) {
    return folder.resolve("filler-" + size);
  }

  @Override
  public void giveBack() {
    try {
      for (int size = CHUNK; size >= 512; size /= 2) {
        Files.deleteIfExists(filler(size));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void close() {
    unmount(folder);
  }
}
