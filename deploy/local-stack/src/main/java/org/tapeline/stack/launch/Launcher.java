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
import java.util.logging.LogManager;
import org.tapeline.stack.demo.DemoLoader;

/** Starts everything on this machine, loads the demo, and stops everything when asked. */
public final class Launcher {
  /** What a stack keeps; the folder may hold other things too, which stay. */
  private static final List<String> KEPT =
      List.of("postgres", "kafka", "mail", "log", "secrets", "demo-loaded");

  private final Path root;
  private final Path data;
  private final Progress progress = new Progress(System.out);
  private final StopRequest stop = new StopRequest(Thread.currentThread());

  private Launcher(Path root) {
    this.root = root;
    this.data = root.resolve(System.getenv().getOrDefault("TAPELINE_DATA", ".local")).normalize();
  }

  /**
   * Arguments: the root of the checkout, then {@code --fresh}, {@code --empty} and {@code
   * --broker-apart} as wanted. Ends with 0 after it was asked to stop, with 1 when a part did not
   * start.
   */
  public static void main(String[] args) throws IOException {
    try (InputStream logging = Launcher.class.getResourceAsStream("/logging.properties")) {
      LogManager.getLogManager().readConfiguration(logging);
    }
    List<String> options = List.of(args).subList(1, args.length);
    int status = 1;
    try {
      status = new Launcher(Path.of(args[0]).toRealPath()).run(options);
    } finally {
      System.out.flush();
      // The libraries' own shutdown hooks would stop what is stopped already.
      Runtime.getRuntime().halt(status);
    }
  }

  private int run(List<String> options) throws IOException {
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
      return withPorts(!options.contains("--empty"), options.contains("--broker-apart"));
    }
  }

  private int withPorts(boolean demo, boolean brokerApart) {
    String wanted = System.getenv().getOrDefault("TAPELINE_PORT", "" + Ports.DEFAULT);
    Optional<Ports> ports = Ports.chosen(wanted);
    if (ports.isEmpty()) {
      progress.say("TAPELINE_PORT must be a number from 1024 to " + Ports.LAST + ".");
      return 1;
    }
    Optional<String> taken = ports.get().taken();
    if (taken.isPresent()) {
      progress.say(
          taken.get() + ". Stop what uses it, or choose others: TAPELINE_PORT=9080 deploy/start");
      return 1;
    }
    Signals.onStop(stop::now);
    Stack stack = new Stack(root, data, ports.get(), progress, brokerApart);
    return run(stack, ports.get(), demo);
  }

  private int run(Stack stack, Ports ports, boolean demo) {
    int status = 0;
    try (stack) {
      try {
        start(stack, ports, demo);
      } catch (Stack.StartFailure | DemoLoader.LoadFailure | IOException | RuntimeException e) {
        if (!stop.wanted()) {
          progress.say("\nTapeline did not start: " + e.getMessage());
          stop.now();
          status = 1;
        }
      }
      stop.await();
      progress.say("\nStopping ...");
    }
    progress.say("Stopped. The data stays in " + shown(data) + " for the next start.");
    return status;
  }

  private void start(Stack stack, Ports ports, boolean demo)
      throws IOException, Stack.StartFailure, DemoLoader.LoadFailure {
    stack.start();
    if (demo) {
      loadDemo(ports);
    }
    progress.say(Greeting.text(ports, demo));
    stack.watch();
  }

  /** A stack without its whole demo is of more use than none; the next start goes on loading. */
  private void loadDemo(Ports ports) throws DemoLoader.LoadFailure {
    try {
      new DemoLoader(root, data, ports.gateway(), progress::say).load();
    } catch (DemoLoader.LoadFailure e) {
      if (stop.wanted()) {
        throw e;
      }
      progress.failed("demo", e.getMessage() + " The next start goes on with it.");
    }
  }

  private void forgetData() {
    progress.say("Forgetting the data of earlier runs.");
    KEPT.stream().map(data::resolve).filter(Files::exists).forEach(Launcher::delete);
  }

  private String shown(Path path) {
    return path.startsWith(root) ? root.relativize(path).toString() : path.toString();
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
