package org.tapeline.acceptance;

import java.time.Duration;
import org.awaitility.Awaitility;
import org.awaitility.core.ConditionFactory;

/** How long the parts may take to hear of each other, on a machine that is busy with more. */
final class Patience {
  private Patience() {}

  static ConditionFactory soon() {
    return Awaitility.await().atMost(Duration.ofSeconds(30)).pollInterval(Duration.ofMillis(200));
  }
}
