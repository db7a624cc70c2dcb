package org.tapeline.proof.faults.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The driver's own book of what was asked for and how it was answered: the other side of every
 * comparison. What is entered stands on the disk too, for whoever has to look into a finding.
 */
public final class Ledger {
  /** How a command ended. */
  public enum Outcome {
    ACCEPTED,
    REFUSED,
    /** Never answered, however often it was sent: whether it was done is not known. */
    UNKNOWN
  }

  /**
   * A command with its answer.
   *
   * @param status of the last answer; 0 when there was none
   * @param sends how often it was sent, from 1
   * @param at when the answer came
   */
  public record Entry(
      Command command, Outcome outcome, int status, String answer, int sends, Instant at) {
    public boolean accepted() {
      return outcome == Outcome.ACCEPTED;
    }

    @Override
    public String toString() {
      return command.kind()
          + " "
          + command.id()
          + " about "
          + command.about()
          + ", sent "
          + sends
          + " times, answered "
          + status
          + " at "
          + at;
    }
  }

  private final List<Entry> entries = new ArrayList<>();
  private final Set<Command> underWay = new HashSet<>();
  private final Path file;

  /**
   * @param file where every entry is added as a line
   */
  public Ledger(Path file) {
    this.file = file;
  }

  /** That it is sent for the first time now. */
  synchronized void begun(Command command) {
    underWay.add(command);
  }

  /** Commands of which it is not known yet how they end. */
  public synchronized List<Command> underWay() {
    return List.copyOf(underWay);
  }

  public synchronized void enter(Entry entry) {
    entries.add(entry);
    underWay.remove(entry.command());
    String line = entry.outcome() + " " + entry + " " + entry.answer() + "\n";
    try {
      Files.writeString(
          file, line, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public synchronized List<Entry> all() {
    return List.copyOf(entries);
  }

  public Stream<Entry> accepted() {
    return all().stream().filter(Entry::accepted);
  }

  /** How many of each kind ended so. */
  public Map<String, Long> counts(Outcome outcome) {
    Map<String, Long> counts = new TreeMap<>();
    all().stream()
        .filter(entry -> entry.outcome() == outcome)
        .forEach(entry -> counts.merge(entry.command().kind(), 1L, Long::sum));
    return counts;
  }

  /** How many were accepted only after at least one answer had been lost. */
  public long sentAgain() {
    return accepted().filter(entry -> entry.sends() > 1).count();
  }
}
