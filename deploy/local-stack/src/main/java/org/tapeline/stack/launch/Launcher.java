package org.tapeline.stack.launch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.logging.LogManager;
import org.tapeline.stack.demo.DemoLoader;

/** Starts everything on this machine, loads the demo, and stops everything when asked. */
public final class Launcher {
  private final Path root;
  private final Path data;
  private final Progress progress = new Progress(System.out);
  private final CountDownLatch stop = new CountDownLatch(1);

  private Launcher(Path root) {
    this.root = root;
    this.data = root.resolve(".local");
  }

  /**
   * Arguments: the root of the checkout, then {@code --fresh} and {@code --empty} as wanted. Ends
   * with 0 after it was asked to stop, with 1 when a part did not start.
   */
  public static void main(String[] args) throws Exception {
    try (InputStream logging = Launcher.class.getResourceAsStream("/logging.properties")) {
      LogManager.getLogManager().readConfiguration(logging);
    }
    List<String> options = List.of(args).subList(1, args.length);
    int status = new Launcher(Path.of(args[0])).run(options);
    System.out.flush();
    Runtime.getRuntime().halt(status);
  }

  private int run(List<String> options) throws IOException, InterruptedException {
    Files.createDirectories(data);
    try (FileChannel file =
            FileChannel.open(
                data.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = file.tryLock()) {
      if (lock == null) {
        progress.say("Tapeline already runs from this folder: stop that one first (Ctrl-C there).");
        return 1;
      }
      new EarlierRun(data).end();
      if (options.contains("--fresh")) {
        forgetData();
      }
      return runStack(!options.contains("--empty"));
    }
  }

  private int runStack(boolean demo) throws IOException, InterruptedException {
    Ports ports = Ports.from(port());
    Optional<String> taken = ports.taken();
    if (taken.isPresent()) {
      progress.say(
          taken.get() + ". Stop what uses it, or choose others: TAPELINE_PORT=9080 deploy/start");
      return 1;
    }
    Signals.onStop(stop::countDown);
    try (Stack stack = new Stack(root, data, ports, progress)) {
      try {
        stack.start();
        if (demo) {
          new DemoLoader(root, data, ports.gateway(), progress::say).load();
        }
      } catch (Stack.StartFailure | DemoLoader.LoadFailure | IOException e) {
        progress.say("\nTapeline did not start: " + e.getMessage() + "\nStopping what runs ...");
        return 1;
      }
      progress.say(Greeting.text(ports, demo));
      stop.await();
      progress.say("\nStopping ...");
    }
    progress.say("Stopped. The data stays in .local for the next start.");
    return 0;
  }

  private static int port() {
    String wanted = System.getenv().getOrDefault("TAPELINE_PORT", "" + Ports.DEFAULT);
    return wanted.matches("[1-9][0-9]{3,4}") ? Integer.parseInt(wanted) : Ports.DEFAULT;
  }

  /** All but the lock, which this very process holds. */
  private void forgetData() throws IOException {
    progress.say("Forgetting the data of earlier runs.");
    try (var files = Files.list(data)) {
      files
          .filter(file -> !file.endsWith("lock") && !file.endsWith("containers"))
          .forEach(Launcher::delete);
    }
  }

  private static void delete(Path path) {
    try (var files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
