package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.io.PrintStream;
import java.sql.SQLException;
import java.util.List;

/** Tries a running Tapeline with bad input of every kind, and tells what it did not stand. */
public final class Fuzz {
  private Fuzz() {}

  public static void main(String[] args) throws Exception {
    System.exit(run(FuzzOptions.of(List.of(args)), System.out) == 0 ? 0 : 1);
  }

  /**
   * @return how many kinds of violations there were
   */
  public static int run(FuzzOptions options, PrintStream out)
      throws IOException, InterruptedException, SQLException {
    Target target = new Target(options.address());
    Tally tally = new Tally();
    Told told = new Told(out);
    Behind behind = new Behind(target, options, tally, told);
    ShownTrial shown = new ShownTrial(target, options, tally, told);
    behind.remember();
    shown.bringMarks();
    new EndpointTrial(target, options, tally, told, behind).run();
    if (options.slow()) {
      new SlowTrial(target, options, tally, told).run();
    }
    behind.brokenRecords();
    shown.look();
    behind.goodEventsFlow();
    tally.print(out);
    told.print();
    return tally.violations().size();
  }
}
