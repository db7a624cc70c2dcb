package org.tapeline.fitting.whole;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.tapeline.testkit.BenchStack;
import org.tapeline.testkit.Counts;

/**
 * Times how long it takes from a helmet that fails to the mail to its player's family, while the
 * stack takes commands at some pace: each tenth is a damage report that says "do not wear", the
 * others are head readings. Before, how many commands a second it takes from eight clients, beside
 * what the database takes of bare rows from eight.
 *
 * <p>Arguments: the gateway's port, the seconds of each pace, and the paces, in commands a second.
 */
final class FailBench {
  private static final int CLIENTS = 8;
  private static final int FAILS_ONE_IN = 10;
  private static final Duration WHOLE = Duration.ofSeconds(10);
  private static final String SENT =
      """
      select r.correlation_id, min(s.recorded_at)
        from journal r join journal s on s.stream = r.stream
       where r.type = 'org.tapeline.notify.notice-raised.v1' and r.data->>'kind' like 'do-not-wear%'
         and s.type = 'org.tapeline.notify.notice-sent.v1'
       group by r.correlation_id
      """;

  private final BenchStack stack;
  private final List<String> tags;
  private final List<String> players;
  private final AtomicInteger nextTag = new AtomicInteger();
  private final AtomicInteger nextPlayer = new AtomicInteger();
  private final Map<String, Integer> refused = new ConcurrentHashMap<>();

  private FailBench(BenchStack stack) throws SQLException {
    this.stack = stack;
    tags = all("inventory", "select tag from helmet where state = 'issued' order by tag");
    players = all("sizing", "select number from player order by number");
  }

  public static void main(String[] arguments) throws Exception {
    Locale.setDefault(Locale.ROOT);
    BenchStack stack = new BenchStack(Integer.parseInt(arguments[0]));
    int seconds = Integer.parseInt(arguments[1]);
    List<Integer> paces = new ArrayList<>();
    for (int i = 2; i < arguments.length; i++) {
      paces.add(Integer.parseInt(arguments[i]));
    }
    int fails = paces.stream().mapToInt(pace -> pace * seconds / FAILS_ONE_IN).sum();
    new WornHelmets(stack, fails + CLIENTS, fails).make();
    fitDays(stack);
    FailBench bench = new FailBench(stack);
    bench.closedLoop();
    for (int pace : paces) {
      bench.pace(pace, seconds);
    }
    System.exit(0);
  }

  private static void fitDays(BenchStack stack) throws Exception {
    for (int field = 0; field < WornHelmets.FIELDS; field++) {
      for (int day = 2; day < 5; day++) {
        stack.post(
            "/fitting/api/fit-days",
            "application/json",
            """
            {"field":"%s","date":"%s","opens":"08:00","closes":"20:00","fitters":10}
            """
                .formatted(WornHelmets.field(field), LocalDate.now().plusDays(day)));
      }
    }
  }

  private List<String> all(String service, String sql) throws SQLException {
    List<String> found = new ArrayList<>();
    try (Connection c = stack.database(service).getConnection();
        ResultSet row = c.createStatement().executeQuery(sql)) {
      while (row.next()) {
        found.add(row.getString(1));
      }
    }
    return found;
  }

  private HttpResponse<String> reading() throws IOException, InterruptedException {
    String player = players.get(nextPlayer.getAndIncrement() % players.size());
    return stack.post(
        "/sizing/api/players/" + player + "/readings",
        "application/json",
        "{\"readings\":[\"531 mm\",\"532 mm\"]}");
  }

  private HttpResponse<String> damage() throws IOException, InterruptedException {
    String tag = tags.get(nextTag.getAndIncrement());
    return stack.post(
        "/inventory/api/helmets/" + tag + "/damage",
        "application/json",
        "{\"where\":\"shell\",\"what\":\"crack\"}");
  }

  private interface Work {
    void once() throws Exception;
  }

  private void closedLoop() throws Exception {
    perSecond(this::reading); // until all is loaded and compiled
    perSecond(this::reading);
    double before = perSecond(this::reading);
    double rows = perSecond(rawRow());
    double after = perSecond(this::reading);
    double commands = (before + after) / 2;
    System.out.printf(
        "commands over HTTP, %d clients: %.0f a second; bare rows, %d connections: %.0f; ratio"
            + " %.2f%n",
        CLIENTS, commands, CLIENTS, rows, commands / rows);
  }

  private Work rawRow() throws SQLException {
    try (Connection c = stack.database("sizing").getConnection()) {
      c.createStatement()
          .execute(
              "create table bench_row (position bigint generated always as identity primary key,"
                  + " id uuid not null, data text not null)");
    }
    ThreadLocal<PreparedStatement> insert = ThreadLocal.withInitial(this::insert);
    return () -> {
      insert.get().setObject(1, UUID.randomUUID());
      insert.get().setString(2, "{\"readings\":[\"531 mm\",\"532 mm\"]}");
      insert.get().executeUpdate();
    };
  }

  private PreparedStatement insert() {
    try {
      return stack
          .database("sizing")
          .getConnection()
          .prepareStatement("insert into bench_row (id, data) values (?, ?)");
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static double perSecond(Work work) throws Exception {
    AtomicLong done = new AtomicLong();
    long start = System.nanoTime();
    try (ExecutorService clients = Executors.newFixedThreadPool(CLIENTS)) {
      for (int i = 0; i < CLIENTS; i++) {
        clients.submit(
            () -> {
              while (System.nanoTime() - start < WHOLE.toNanos()) {
                work.once();
                done.incrementAndGet();
              }
              return null;
            });
      }
    }
    return done.get() * 1e9 / (System.nanoTime() - start);
  }

  /** Sends when each is due, whether or not the earlier ones were answered. */
  private void pace(int perSecond, int seconds) throws Exception {
    Map<UUID, Instant> failed = new ConcurrentHashMap<>();
    List<Double> answers = Collections.synchronizedList(new ArrayList<>());
    int commands = perSecond * seconds;
    long start = System.nanoTime();
    try (ExecutorService senders = Executors.newVirtualThreadPerTaskExecutor()) {
      for (int i = 0; i < commands; i++) {
        long due = start + i * Duration.ofSeconds(1).toNanos() / perSecond;
        while (System.nanoTime() < due) {
          LockSupport.parkNanos(due - System.nanoTime());
        }
        boolean fails = i % FAILS_ONE_IN == 0;
        senders.submit(() -> command(fails, failed, answers));
      }
    }
    double took = (System.nanoTime() - start) / 1e9;
    int expected = failed.size();
    new Counts(stack.database("notify"))
        .awaitAtLeast(
            expected + sentBefore, "select count(*) from (" + SENT + ") s", WornHelmets.PATIENCE);
    sentBefore += expected;
    report(perSecond, commands / took, answers, failed);
  }

  private long sentBefore;

  private Void command(boolean fails, Map<UUID, Instant> failed, List<Double> answers) {
    Instant asked = Instant.now();
    try {
      HttpResponse<String> answer = fails ? damage() : reading();
      answers.add(Duration.between(asked, Instant.now()).toMillis() / 1000.0);
      if (fails) {
        failed.put(
            UUID.fromString(answer.headers().firstValue("Correlation-Id").orElseThrow()), asked);
      }
    } catch (IOException e) {
      refused.merge(
          String.valueOf(e.getMessage()).replaceAll("^\\S+: (\\d{3}).*", "$1"), 1, Integer::sum);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return null;
  }

  private void report(int pace, double kept, List<Double> answers, Map<UUID, Instant> failed)
      throws SQLException {
    List<Double> seconds = new ArrayList<>();
    try (Connection c = stack.database("notify").getConnection();
        ResultSet row = c.createStatement().executeQuery(SENT)) {
      while (row.next()) {
        Instant asked = failed.get(row.getObject(1, UUID.class));
        if (asked != null) {
          Instant sent = row.getObject(2, OffsetDateTime.class).toInstant();
          seconds.add(Duration.between(asked, sent).toMillis() / 1000.0);
        }
      }
    }
    System.out.printf(
        "%d commands a second (kept up: %.0f): answered in %.2f s (p50), %.2f s (p99); from failing"
            + " to the family's mail %.2f s (p50), %.2f s (p99); %d mails; refused: %s%n",
        pace,
        kept,
        at(answers, 0.5),
        at(answers, 0.99),
        at(seconds, 0.5),
        at(seconds, 0.99),
        seconds.size(),
        refused.isEmpty() ? "none" : new TreeMap<>(refused));
    refused.clear();
  }

  private static double at(List<Double> values, double share) {
    List<Double> sorted = values.stream().sorted(Comparator.naturalOrder()).toList();
    return sorted.isEmpty() ? Double.NaN : sorted.get((int) Math.ceil(share * sorted.size()) - 1);
  }
}
