package org.tapeline.proof.faults;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.tapeline.proof.faults.compare.Findings;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Ledger.Outcome;
import org.tapeline.stack.launch.Ports;

/** {@code deploy/faults}: a season with faults, its counts, and what does not hold. */
public final class FaultsMain {
  private static final int MOST_SHOWN = 60;
  private static final Instant BEGUN = Instant.now();

  private FaultsMain() {}

  /**
   * Arguments: the root of the checkout, the port of the gateway, the folder for data, then the
   * options. Ends with 0 when all holds, with 1 when something does not, with 2 for wrong options.
   */
  public static void main(String[] args) throws IOException, SQLException {
    // What the clients of the broker say while it is away is no news here.
    Logger.getLogger("").setLevel(Level.OFF);
    Options options;
    try {
      options = Options.of(List.of(args).subList(3, args.length));
    } catch (IllegalArgumentException e) {
      System.err.println(e.getMessage());
      System.exit(2);
      return;
    }
    StackPlace place =
        new StackPlace(Path.of(args[0]), Path.of(args[2]), Ports.from(Integer.parseInt(args[1])));
    System.exit(run(options, place) ? 0 : 1);
  }

  private static boolean run(Options options, StackPlace place) throws IOException, SQLException {
    say("seed " + options.seed());
    try (Trial trial = Trial.on(place, FaultsMain::say)) {
      Thread stop = new Thread(trial::close);
      Runtime.getRuntime().addShutdownHook(stop);
      trial.run(options);
      Findings findings = trial.compare();
      report(trial, findings, options);
      Runtime.getRuntime().removeShutdownHook(stop);
      return findings.all().isEmpty();
    }
  }

  private static void say(String what) {
    System.out.printf("%5d s  %s%n", Duration.between(BEGUN, Instant.now()).toSeconds(), what);
  }

  private static void report(Trial trial, Findings findings, Options options) {
    table("Faults", trial.strikes().counts());
    table("Commands accepted", trial.ledger().counts(Outcome.ACCEPTED));
    table("Commands refused", trial.ledger().counts(Outcome.REFUSED));
    System.out.printf(
        "%n%d accepted commands were sent more than once%n", trial.ledger().sentAgain());
    table("Compared", findings.looked());
    findings.all().stream()
        .limit(MOST_SHOWN)
        .forEach(f -> System.out.printf("%n%s %s: %s", f.sort(), f.check(), f.evidence()));
    System.out.printf("%n%s  (seed %d)%n", findings.line(), options.seed());
  }

  private static void table(String title, Map<String, ? extends Number> rows) {
    System.out.printf("%n%s%n", title);
    rows.forEach((what, count) -> System.out.printf("  %-46s %7d%n", what, count.longValue()));
  }
}
