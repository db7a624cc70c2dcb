package org.tapeline.fitting.whole;

import java.sql.Connection;
import java.sql.ResultSet;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.tapeline.testkit.BenchStack;
import org.tapeline.testkit.Counts;

/**
 * Times a hold on helmets that are all worn, on a running stack without other data: from placing it
 * to the last helmet held, the last sign-off withdrawn and the last notice raised.
 *
 * <p>Arguments: the gateway's port, how many helmets, how many free ones besides.
 */
final class HoldBench {
  private final BenchStack stack;
  private final int helmets;

  private HoldBench(BenchStack stack, int helmets) {
    this.stack = stack;
    this.helmets = helmets;
  }

  public static void main(String[] arguments) throws Exception {
    Locale.setDefault(Locale.ROOT);
    BenchStack stack = new BenchStack(Integer.parseInt(arguments[0]));
    int helmets = Integer.parseInt(arguments[1]);
    new WornHelmets(stack, helmets, Integer.parseInt(arguments[2])).make();
    new HoldBench(stack, helmets).run();
  }

  private void run() throws Exception {
    Instant asked = Instant.now();
    String answer =
        stack
            .post(
                "/inventory/api/holds",
                "application/json",
                "{\"reason\":\"recall\",\"reference\":\"BENCH-1\",\"lots\":\"WORN-1\"}")
            .body();
    say("placed", asked, Instant.now());
    System.out.println("  " + answer);
    say("last helmet held", asked, last("inventory", of("inventory.helmet-held.v1")));
    say("last sign-off withdrawn", asked, last("fitting", of("fitting.sign-off-withdrawn.v1")));
    say("last re-fit case opened", asked, last("fitting", of("fitting.refit-opened.v1")));
    String toFamilies = " and data ->> 'kind' = 'do-not-wear-refit'";
    say("last notice raised", asked, last("notify", of("notify.notice-raised.v1") + toFamilies));
  }

  private static String of(String type) {
    return "type = 'org.tapeline." + type + "'";
  }

  private static void say(String what, Instant from, Instant to) {
    double seconds = Duration.between(from, to).toMillis() / 1000.0;
    System.out.printf("%-28s %8.1f s after the hold was asked for%n", what, seconds);
  }

  /** When the last of them was recorded, once there are as many as helmets. */
  private Instant last(String service, String those) throws Exception {
    new Counts(stack.database(service))
        .awaitAtLeast(helmets, "select count(*) from journal where " + those, WornHelmets.PATIENCE);
    try (Connection c = stack.database(service).getConnection();
        ResultSet row =
            c.createStatement()
                .executeQuery("select max(recorded_at) from journal where " + those)) {
      row.next();
      return row.getObject(1, OffsetDateTime.class).toInstant();
    }
  }
}
