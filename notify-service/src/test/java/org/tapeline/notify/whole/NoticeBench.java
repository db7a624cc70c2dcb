package org.tapeline.notify.whole;

import java.io.IOException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import org.postgresql.ds.PGSimpleDataSource;
import org.tapeline.notify.whole.Peers.Event;
import org.tapeline.testkit.BenchStack;
import org.tapeline.testkit.Counts;

/**
 * Times notices on a running stack without other data: first a steady stream of causes, then many
 * "do not wear" at once. The causes are published as fitting would; every case has two, its opening
 * and its booking, and leads to one mail. What the cases need is on the shelf.
 *
 * <p>Arguments: the gateway's port, causes a second, for how many seconds, how many notices at
 * once.
 */
final class NoticeBench {
  private static final Duration PATIENCE = Duration.ofMinutes(30);
  private static final int CHUNK = 1_000;
  private static final int FIELDS = 14;
  private static final int PARTS = 9_000;
  private static final int TICKS = 10;
  private static final String SATURDAY = "2035-09-15T15:00:00Z";

  /** Each cause with the moment at which its notice went out. */
  private static final String SENT =
      """
      select c.event, min(j.recorded_at)
        from notice_cause c join journal j on j.stream = 'notice-' || c.notice
       where j.type = 'org.tapeline.notify.notice-sent.v1'
       group by c.event
      """;

  private final BenchStack stack;
  private final PGSimpleDataSource database;
  private final Counts counts;
  private final Peers peers;

  private NoticeBench(int gateway) {
    stack = new BenchStack(gateway);
    database = stack.database("notify");
    counts = new Counts(database);
    peers = new Peers("127.0.0.1:" + (gateway + 7001));
  }

  public static void main(String[] arguments) throws Exception {
    Locale.setDefault(Locale.ROOT);
    NoticeBench bench = new NoticeBench(Integer.parseInt(arguments[0]));
    int perSecond = Integer.parseInt(arguments[1]);
    int seconds = Integer.parseInt(arguments[2]);
    bench.places();
    bench.steady(perSecond / 2, 5);
    System.out.println("warmed up");
    bench.reportSteady(perSecond, bench.steady(perSecond / 2, seconds));
    bench.atOnce(Integer.parseInt(arguments[3]));
    bench.peers.close();
  }

  /** With all that the cases need: a part that lacks would be a cause of mails to the depot. */
  private void places() throws IOException, InterruptedException {
    StringBuilder places = new StringBuilder("code,name,kind,altitude_m,time_zone\n");
    StringBuilder parts = new StringBuilder("place,item,model,quantity\n");
    for (int i = 0; i < FIELDS; i++) {
      places.append("%s,Field %d,field,1500,America/Denver%n".formatted(field(i), i));
      parts.append("%s,jaw-pad-15mm,model-a,%d%n".formatted(field(i), PARTS));
    }
    stack.post("/inventory/api/import/places", "text/csv", places.toString());
    stack.post("/inventory/api/import/parts", "text/csv", parts.toString());
  }

  private static String field(int i) {
    return "BENCH%02d".formatted(i % FIELDS);
  }

  private List<Family> families(int count, String mail) throws Exception {
    long before = counts.of("select count(*) from guardianship");
    List<Family> families = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      families.add(new Family("Ada").guardian("en", mail + i + "@families.example.org"));
    }
    for (int from = 0; from < count; from += CHUNK) {
      peers.sendAll(
          families.subList(from, Math.min(from + CHUNK, count)).stream()
              .flatMap(family -> family.details().stream())
              .toList());
    }
    counts.awaitAtLeast(before + count, "select count(*) from guardianship", PATIENCE);
    return families;
  }

  /**
   * Publishes pairs of causes at an even pace, ten times a second as many as are due, and waits
   * until all their notices are out.
   *
   * @return when each case's opening was published, by its event
   */
  private Map<UUID, Instant> steady(int pairsPerSecond, int seconds) throws Exception {
    List<List<Event>> pairs = pairs(families(pairsPerSecond * seconds, "steady."));
    Map<UUID, Instant> published = new HashMap<>();
    long before = sent();
    long start = System.nanoTime();
    int aTick = Math.max(1, pairsPerSecond / TICKS);
    for (int from = 0; from < pairs.size(); from += aTick) {
      long due = start + from * Duration.ofSeconds(1).toNanos() / pairsPerSecond;
      while (System.nanoTime() < due) {
        LockSupport.parkNanos(due - System.nanoTime());
      }
      List<List<Event>> tick = pairs.subList(from, Math.min(from + aTick, pairs.size()));
      tick.forEach(pair -> published.put(pair.getFirst().id(), Instant.now()));
      peers.sendAll(tick.stream().flatMap(List::stream).toList());
    }
    System.out.printf("%d cases published in %.1f s%n", pairs.size(), secondsSince(start));
    awaitSent(before + pairs.size());
    return published;
  }

  private static double secondsSince(long nanos) {
    return (System.nanoTime() - nanos) / 1e9;
  }

  /** Two causes for each family, at a field of many. */
  private static List<List<Event>> pairs(List<Family> families) {
    List<List<Event>> pairs = new ArrayList<>();
    for (Family family : families) {
      Refit refit = new Refit(family.player, field(pairs.size()));
      pairs.add(List.of(refit.opened(1), refit.booked(2, SATURDAY)));
    }
    return pairs;
  }

  private void reportSteady(int perSecond, Map<UUID, Instant> published) throws SQLException {
    List<Double> seconds = new ArrayList<>();
    try (Connection c = database.getConnection();
        Statement statement = c.createStatement();
        ResultSet row = statement.executeQuery(SENT)) {
      while (row.next()) {
        Instant cause = published.get(row.getObject(1, UUID.class));
        if (cause != null) {
          Instant sent = row.getObject(2, OffsetDateTime.class).toInstant();
          seconds.add(Duration.between(cause, sent).toMillis() / 1000.0);
        }
      }
    }
    seconds.sort(Comparator.naturalOrder());
    System.out.printf(
        "%d causes a second: from cause to sent %.2f s (p50), %.2f s (p99), %.2f s (longest)%n",
        perSecond, at(seconds, 0.5), at(seconds, 0.99), seconds.getLast());
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
  }

  private void atOnce(int count) throws Exception {
    List<List<Event>> pairs = pairs(families(count, "once."));
    long before = sent();
    Instant begun = Instant.now();
    for (int from = 0; from < count; from += CHUNK) {
      peers.sendAll(
          pairs.subList(from, Math.min(from + CHUNK, count)).stream()
              .flatMap(List::stream)
              .toList());
    }
    say("all causes published", begun);
    counts.awaitAtLeast(
        before + count, "select count(*) from notice where kind like 'do-not-wear%'", PATIENCE);
    say("last notice raised", begun);
    awaitSent(before + count);
    say("last notice sent", begun);
  }

  private static void say(String what, Instant begun) {
    double seconds = Duration.between(begun, Instant.now()).toMillis() / 1000.0;
    System.out.printf("%-24s %8.1f s after the first was published%n", what, seconds);
  }

  private long sent() {
    return counts.of(
        "select count(*) from notice where state = 'sent' and kind like 'do-not-wear%'");
  }

  private void awaitSent(long count) throws Exception {
    counts.awaitAtLeast(
        count,
        "select count(*) from notice where state = 'sent' and kind like 'do-not-wear%'",
        PATIENCE);
  }
}
