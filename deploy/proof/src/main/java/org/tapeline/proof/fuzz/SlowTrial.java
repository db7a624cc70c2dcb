package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.time.Duration;
import org.tapeline.proof.fuzz.slow.LargeBodies;
import org.tapeline.proof.fuzz.slow.SlowFlood;

/** Callers who take for ever, and bodies that never fit. */
final class SlowTrial {
  private static final Duration LENGTH = Duration.ofSeconds(45);
  private static final String PATH = "/sizing/players";

  private final Target target;
  private final FuzzOptions options;
  private final Tally tally;
  private final Told told;

  SlowTrial(Target target, FuzzOptions options, Tally tally, Told told) {
    this.target = target;
    this.options = options;
    this.tally = tally;
    this.told = told;
  }

  void run() throws IOException, InterruptedException {
    String manager = Target.login(Target.USERS.getFirst());
    SlowFlood.Outcome outcome =
        new SlowFlood(target.host(), options.patience())
            .run(target.ports().gateway(), PATH, manager, LENGTH);
    told.line(
        "slow callers: others served %d, missed %d; slow heads ended %d of %d",
        outcome.served(), outcome.missed(), outcome.ended(), outcome.heads());
    if (outcome.missed() > 0 || outcome.ended() < outcome.heads()) {
      tally.violated(
          new Tally.Violation("gateway", "slow callers hold it up", "slow callers", "" + outcome));
    }
    LargeBodies large = new LargeBodies(target.host(), options.patience());
    for (LargeBodies.Tried tried : large.run(target.ports().gateway(), manager)) {
      told.line("%s answered %d", tried.what(), tried.status());
      if (tried.status() != 413) {
        tally.violated(
            new Tally.Violation(
                tried.path(), "status " + tried.status() + " instead of 413", tried.what(), ""));
      }
    }
  }
}
