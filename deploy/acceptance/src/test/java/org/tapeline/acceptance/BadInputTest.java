package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.tapeline.proof.fuzz.Fuzz;
import org.tapeline.proof.fuzz.FuzzOptions;

/** A short run of {@code deploy/fuzz}; last, since nothing is as it was after it. */
@Order(Integer.MAX_VALUE)
class BadInputTest {
  private static final int SEED = 1;
  private static final int SECONDS = 20;
  private static final double SHARE_OF_RECORDS = 0.2;
  private static final int PAGES = 120;

  @Test
  @DisplayName("Whatever is sent to whichever endpoint or topic, it is refused in words or done")
  void standsBadInput() throws Exception {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    FuzzOptions options =
        new FuzzOptions(
            Tapeline.ROOT,
            URI.create(Tapeline.address()),
            LocalRun.data("data"),
            SEED,
            SECONDS,
            SHARE_OF_RECORDS,
            PAGES,
            false);
    int violations = Fuzz.run(options, new PrintStream(said, true, StandardCharsets.UTF_8));
    assertThat(violations).as(said.toString(StandardCharsets.UTF_8)).isZero();
  }
}
