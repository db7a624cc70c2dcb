package org.tapeline.proof.faults.process;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Starts an empty stack of its own, each server on a disk of its own where that can be. */
public final class StackStart {
  /** What a file of the database may have when there is no disk of its own: below a log segment. */
  private static final long DATABASE_FILE = 1 << 20;

  private static final long BROKER_FILE = 4096;

  private StackStart() {}

  /**
   * @throws IOException with all that it said when it did not start
   */
  public static FragileStack start(StackPlace place) throws IOException {
    forget(place);
    List<SmallDisk> disks = new ArrayList<>();
    for (Part part : List.of(Part.DATABASE, Part.BROKER)) {
      SmallDisk.mount(place.data().resolve(part.code())).ifPresent(disks::add);
    }
    Process launcher = launch(place);
    Map<Part, Quota> quotas = new EnumMap<>(Part.class);
    FragileStack stack = new FragileStack(place, launcher, quotas, disks);
    try {
      awaitGreeting(launcher);
      stack.learn();
    } catch (IOException e) {
      stack.close();
      throw e;
    }
    boolean own = disks.size() == 2;
    quotas.put(Part.DATABASE, own ? disks.get(0) : limit(stack, Part.DATABASE, DATABASE_FILE));
    quotas.put(Part.BROKER, own ? disks.get(1) : limit(stack, Part.BROKER, BROKER_FILE));
    return stack;
  }

  private static FileLimit limit(FragileStack stack, Part part, long bytes) {
    return new FileLimit(() -> stack.processesOf(part), bytes);
  }

  private static Process launch(StackPlace place) throws IOException {
    List<String> command =
        List.of(place.root().resolve("deploy/start").toString(), "--empty", "--broker-apart");
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    Map<String, String> environment = builder.environment();
    environment.put("TAPELINE_PORT", Integer.toString(place.ports().gateway()));
    environment.put("TAPELINE_DATA", place.data().toString());
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    // A try that was cut off is made again after this long; nobody wants to wait two minutes for
    // quiet. It must stay above the time-out.
    environment.put("TAPELINE_MAIL_TIMEOUT", "PT5S");
    environment.put("TAPELINE_MAIL_CUT_OFF_AFTER", "PT12S");
    environment.put("TAPELINE_TEXT_TIMEOUT", "PT5S");
    environment.put("TAPELINE_TEXT_CUT_OFF_AFTER", "PT12S");
    return builder.start();
  }

  private static void awaitGreeting(Process launcher) throws IOException {
    BufferedReader output =
        new BufferedReader(
            new InputStreamReader(launcher.getInputStream(), StandardCharsets.UTF_8));
    List<String> said = new ArrayList<>();
    for (String line = output.readLine(); line != null; line = output.readLine()) {
      said.add(line);
      if (line.contains("Ctrl-C stops everything")) {
        Thread.ofVirtual().start(() -> passOver(output));
        return;
      }
    }
    throw new IOException("The stack did not start:\n" + String.join("\n", said));
  }

  /** What it says later is that parts ended, which they are meant to; it must not wait for us. */
  private static void passOver(BufferedReader output) {
    try {
      Optional<String> line = Optional.ofNullable(output.readLine());
      while (line.isPresent()) {
        line = Optional.ofNullable(output.readLine());
      }
    } catch (IOException e) {
      // The launcher has ended: there is nothing more to be passed over.
      return;
    }
  }

  private static void forget(StackPlace place) throws IOException {
    for (Part part : List.of(Part.DATABASE, Part.BROKER)) {
      SmallDisk.unmount(place.data().resolve(part.code()));
    }
    if (Files.exists(place.data())) {
      try (var files = Files.walk(place.data())) {
        files.sorted(Comparator.reverseOrder()).forEach(StackStart::delete);
      }
    }
    Files.createDirectories(place.data());
  }

  private static void delete(Path file) {
    try {
      Files.delete(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
