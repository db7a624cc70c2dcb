package org.tapeline.proof.faults.strike;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.tapeline.proof.faults.process.FragileStack;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.Quota;
import org.tapeline.proof.faults.process.StackPlace;

/** Parts that are there and do nothing: they hang, or have no room on their disk. */
final class Hangs {
  /** Longer than a consumer's session and than the oldest picture of the sideline: 10 s each. */
  private static final int PAUSE_MILLIS = 11_000;

  private static final int FULL_MILLIS = 5_000;
  private static final int MORE_MILLIS = 4_000;

  private Hangs() {}

  static void pause(FragileStack stack, Part part, Random random) {
    List<ProcessHandle> paused = stack.pause(part);
    try {
      StackPlace.rest(Duration.ofMillis(PAUSE_MILLIS + random.nextInt(MORE_MILLIS)));
    } finally {
      stack.goOn(paused);
    }
    stack.revive(part);
  }

  /** A server that ends over it is started again once there is room. */
  static void fullDisk(FragileStack stack, Part part, Random random) {
    Quota quota = stack.quota(part);
    try {
      quota.useUp();
      StackPlace.rest(Duration.ofMillis(FULL_MILLIS + random.nextInt(MORE_MILLIS)));
    } finally {
      quota.giveBack();
    }
    stack.revive(part);
  }
}
