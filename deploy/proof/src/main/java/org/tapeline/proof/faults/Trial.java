package org.tapeline.proof.faults;

import java.io.IOException;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.tapeline.proof.faults.compare.Comparison;
import org.tapeline.proof.faults.compare.Findings;
import org.tapeline.proof.faults.compare.Quiet;
import org.tapeline.proof.faults.process.FragileStack;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.process.StackStart;
import org.tapeline.proof.faults.season.Gate;
import org.tapeline.proof.faults.season.Ledger;
import org.tapeline.proof.faults.season.Preparation;
import org.tapeline.proof.faults.season.Season;
import org.tapeline.proof.faults.strike.Strikes;
import org.tapeline.proof.faults.watch.SidelineWatch;

/** A season on a stack of its own, struck by faults, and what came of it. */
public final class Trial implements AutoCloseable {
  private static final Duration QUIET_WITHIN = Duration.ofMinutes(4);
  private static final List<String> TEAMS =
      List.of(
          "U10-HAWKS",
          "U12-KITES",
          "U8-OTTERS",
          "U12-HERONS",
          "U10-FOXES",
          "U12-STOATS",
          "U14-BADGERS",
          "U14-IBEX");
  private static final int TRIES = 6;
  private static final Duration LAST_ANSWER = Duration.ofMinutes(2);

  private final FragileStack stack;
  private final Ledger ledger;
  private final Gate gate;
  private final Consumer<String> say;
  private final AtomicBoolean givenUp = new AtomicBoolean();
  private Strikes strikes;
  private SidelineWatch watch;

  private Trial(FragileStack stack, Consumer<String> say) {
    this.stack = stack;
    this.say = say;
    this.ledger = new Ledger(stack.place().data().resolve("ledger.txt"));
    this.gate = new Gate(stack.place(), ledger, givenUp::get);
  }

  /**
   * Starts the stack.
   *
   * @param say told what happens
   */
  static Trial on(StackPlace place, Consumer<String> say) throws IOException {
    say.accept("starting the stack");
    return new Trial(StackStart.start(place), say);
  }

  /** What the driver asked for and how it was answered. */
  public Ledger ledger() {
    return ledger;
  }

  StackPlace place() {
    return stack.place();
  }

  Strikes strikes() {
    return strikes;
  }

  /** Plays the season and strikes; with no kinds every part is killed once and that is all. */
  void run(Options options) throws IOException {
    say.accept("taking in the roster, the helmets and the parts");
    Season season = new Preparation(stack.place(), gate, options.seed()).season();
    strikes = new Strikes(stack, gate, options.kinds(), options.seed(), this::struck);
    watch = new SidelineWatch(gate, ledger, TEAMS);
    List<Thread> drivers = season.begin();
    Thread coaches = watch.begin();
    Instant end = Instant.now().plus(options.length());
    try {
      if (options.length().isZero()) {
        strikes.eachOnce();
      }
      strikes.until(end);
    } finally {
      season.end();
      for (Part part : Part.values()) {
        stack.revive(part);
      }
      join(drivers);
      watch.end();
      join(List.of(coaches));
    }
  }

  private void struck(String what) {
    say.accept("fault: " + what + "  (" + ledger.all().size() + " commands so far)");
  }

  private void join(List<Thread> drivers) {
    Instant until = Instant.now().plus(LAST_ANSWER);
    try {
      for (Thread driver : drivers) {
        driver.join(Duration.between(Instant.now(), until));
        givenUp.set(driver.isAlive());
      }
      for (Thread driver : drivers) {
        driver.join();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }

  /** Waits for quiet and compares; once more when something happened while it compared. */
  public Findings compare() throws SQLException {
    for (int tries = 1; tries <= TRIES; tries++) {
      say.accept("waiting for quiet");
      List<String> restless = new Quiet(stack.place()).await(QUIET_WITHIN);
      say.accept("comparing");
      Optional<Findings> found = Comparison.of(stack.place(), ledger);
      if (found.isPresent()) {
        restless.forEach(what -> found.get().lost("quiet", what));
        addSideline(found.get());
        return found.get();
      }
    }
    throw new IllegalStateException("The journals grow and grow: nothing can be compared");
  }

  private void addSideline(Findings found) {
    watch.wrong().forEach(what -> found.differing("sideline", what));
    found.looked("lines of sideline lists while it went on", watch.looked());
    found.looked("lines of sideline lists while it went on, of these not known", watch.unknown());
  }

  @Override
  public void close() {
    stack.close();
  }
}
