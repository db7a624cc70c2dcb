package org.tapeline.proof.faults.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/** The processes of one stack, told from those of others by its data folder. */
final class PartProcesses {
  private final StackPlace place;
  private final Set<Long> copies = ConcurrentHashMap.newKeySet();

  PartProcesses(StackPlace place) {
    this.place = place;
  }

  /** A second copy of a service looks like the first; it is none of the parts. */
  void passOver(Process copy) {
    copies.add(copy.pid());
  }

  /** The process of a part; empty while it does not run. */
  Optional<ProcessHandle> find(Part part) {
    return part == Part.DATABASE ? postmaster() : java(part).findFirst();
  }

  private Optional<ProcessHandle> postmaster() {
    try {
      List<String> lines = Files.readAllLines(place.data().resolve("postgres/postmaster.pid"));
      return ProcessHandle.of(Long.parseLong(lines.getFirst().strip()))
          .filter(process -> process.isAlive() && ours(process));
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private boolean ours(ProcessHandle process) {
    try {
      Path commandLine = Path.of("/proc", Long.toString(process.pid()), "cmdline");
      return Files.readString(commandLine).contains(place.data().toString());
    } catch (IOException e) {
      return false;
    }
  }

  private Stream<ProcessHandle> java(Part part) {
    return ProcessHandle.allProcesses()
        .filter(
            process -> {
              List<String> said = process.info().arguments().map(List::of).orElse(List.of());
              return said.contains("-Dtapeline.service=" + part.code())
                  && said.contains("-Dtapeline.data=" + place.data())
                  && !copies.contains(process.pid())
                  && process.isAlive();
            });
  }

  /** All processes of a part: a database server has many. */
  Stream<ProcessHandle> of(Part part) {
    return find(part).stream().flatMap(p -> Stream.concat(Stream.of(p), p.children()));
  }

  /** Waits for the end of one that was killed. */
  static void awaitEnd(ProcessHandle process) {
    try {
      process.onExit().get(30, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    } catch (ExecutionException | TimeoutException e) {
      throw new IllegalStateException("Process " + process.pid() + " did not end", e);
    }
  }
}
