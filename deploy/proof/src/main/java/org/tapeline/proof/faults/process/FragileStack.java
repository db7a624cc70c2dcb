package org.tapeline.proof.faults.process;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/**
 * A stack that {@code deploy/start} runs, whose parts can be killed, paused, starved of disk and
 * started again. Everything started is ended when this is closed.
 */
public final class FragileStack implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(180);

  private final StackPlace place;
  private final PartProcesses processes;
  private final Process launcher;
  private final Map<Part, Quota> quotas;
  private final List<SmallDisk> disks;
  private final Map<Part, Recipe> recipes = new HashMap<>();
  private final List<Process> startedHere = new ArrayList<>();
  private volatile boolean closing;
  private final Map<Part, Object> locks = new EnumMap<>(Part.class);
  private final ExecutorService starter =
      Executors.newSingleThreadExecutor(Thread.ofPlatform().daemon().name("starter").factory());

  FragileStack(StackPlace place, Process launcher, Map<Part, Quota> quotas, List<SmallDisk> disks) {
    this.place = place;
    this.processes = new PartProcesses(place);
    this.launcher = launcher;
    this.quotas = quotas;
    this.disks = disks;
    for (Part part : Part.values()) {
      locks.put(part, new Object());
    }
  }

  public StackPlace place() {
    return place;
  }

  /** Notes how every part was started, while all of them run. */
  void learn() throws IOException {
    for (Part part : Part.values()) {
      ProcessHandle running =
          processes.find(part).orElseThrow(() -> new IOException(part.code() + " does not run"));
      Recipe recipe = Recipe.of(running.pid());
      // The server refuses to run as root, whom it does not meet in a user namespace of its own.
      boolean root = part == Part.DATABASE && Shell.run("id", "-u").said().strip().equals("0");
      recipes.put(part, root ? recipe.under("unshare", "-U") : recipe);
    }
  }

  /** The processes of a part at this moment. */
  Stream<ProcessHandle> processesOf(Part part) {
    return processes.of(part);
  }

  public Quota quota(Part part) {
    return quotas.get(part);
  }

  /** By SIGKILL, all of its processes: no time to finish anything, as when the power fails. */
  public void kill(Part part) {
    List<ProcessHandle> all = processes.of(part).toList();
    all.forEach(process -> Shell.signal(process.pid(), "KILL"));
    all.forEach(PartProcesses::awaitEnd);
  }

  /** As the processes of a machine that hangs: their connections stay open, nothing answers. */
  public List<ProcessHandle> pause(Part part) {
    List<ProcessHandle> all = processes.of(part).toList();
    all.forEach(process -> Shell.signal(process.pid(), "STOP"));
    return all;
  }

  public void goOn(List<ProcessHandle> paused) {
    paused.forEach(process -> Shell.signal(process.pid(), "CONT"));
  }

  /** Starts a part again if it does not run, and waits until it can be used. */
  public void revive(Part part) {
    synchronized (locks.get(part)) {
      Instant until = Instant.now().plus(PATIENCE);
      while (Instant.now().isBefore(until)) {
        if (processes.find(part).isEmpty()) {
          start(recipes.get(part), part.code());
        }
        Instant visible = Instant.now().plusSeconds(3);
        BooleanSupplier ended =
            () -> Instant.now().isAfter(visible) && processes.find(part).isEmpty();
        if (place.awaitReady(part, Duration.between(Instant.now(), until), ended)) {
          return;
        }
      }
    }
    throw new IllegalStateException(part.code() + " does not come up again; see " + place.logs());
  }

  /** On one thread that lives as long as the stack: what a thread started ends with it. */
  private Process start(Recipe recipe, String name) {
    try {
      return starter.submit(() -> startNow(recipe, name)).get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(name + " could not be started", e.getCause());
    }
  }

  private Process startNow(Recipe recipe, String name) throws IOException {
    if (closing) {
      throw new IOException("The stack is being stopped");
    }
    Process process = recipe.start(place.logs().resolve(name + "-again.log").toFile());
    startedHere.add(process);
    return process;
  }

  /** Another copy of a service beside the one that runs, at a port of its own. */
  public Process copyOf(Part service, int port) {
    Recipe other = recipes.get(service).with("QUARKUS_HTTP_PORT", Integer.toString(port));
    Process copy = start(other, service.code() + "-copy");
    processes.passOver(copy);
    return copy;
  }

  @Override
  public void close() {
    closing = true;
    awaitStarted();
    List<Process> services =
        startedHere.stream().filter(Process::isAlive).filter(FragileStack::java).toList();
    services.forEach(Process::destroy);
    services.forEach(process -> endAfter(process, 20));
    launcher.destroy();
    endAfter(launcher, 60);
    disks.forEach(SmallDisk::close);
  }

  /** Whatever is just being started has been started then, and is stopped with the others. */
  private void awaitStarted() {
    starter.shutdown();
    try {
      starter.awaitTermination(10, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The database server is stopped by the launcher, after everything that uses it. */
  private static boolean java(Process process) {
    return process.info().command().filter(c -> c.endsWith("/java")).isPresent();
  }

  private static void endAfter(Process process, int seconds) {
    try {
      if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
