package org.tapeline.fitting.whole;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.postgresql.ds.PGSimpleDataSource;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.store.JdbcTransactions;
import org.tapeline.journal.store.PostgresJournal;
import org.tapeline.testkit.Counts;

/**
 * Times a hold on helmets that are all worn, on a running stack without other data: from placing it
 * to the last helmet held, the last sign-off withdrawn and the last notice raised. Players and
 * helmets are imported; their sign-offs are written into fitting's journal as sessions would.
 *
 * <p>Arguments: the gateway's port, how many helmets, how many free ones besides.
 */
final class HoldBench {
  private static final int CHUNK = 2_000;
  private static final Duration PATIENCE = Duration.ofMinutes(40);
  private static final List<String> SIZES = List.of("youth-small", "youth-medium", "youth-large");
  private static final int FIELDS = 14;

  private final int gateway;
  private final int helmets;
  private final int free;

  private HoldBench(int gateway, int helmets, int free) {
    this.gateway = gateway;
    this.helmets = helmets;
    this.free = free;
  }

  public static void main(String[] arguments) throws Exception {
    new HoldBench(
            Integer.parseInt(arguments[0]),
            Integer.parseInt(arguments[1]),
            Integer.parseInt(arguments[2]))
        .run();
  }

  private void run() throws Exception {
    Locale.setDefault(Locale.ROOT);
    prepare();
    Instant asked = Instant.now();
    String answer =
        post(
            "/inventory/api/holds",
            "application/json",
            "{\"reason\":\"recall\",\"reference\":\"BENCH-1\",\"lots\":\"WORN-1\"}");
    say("placed", asked, Instant.now());
    System.out.println("  " + answer);
    String held = "org.tapeline.inventory.helmet-held.v1";
    String withdrawn = "org.tapeline.fitting.sign-off-withdrawn.v1";
    String opened = "org.tapeline.fitting.refit-opened.v1";
    String raised = "org.tapeline.notify.notice-raised.v1";
    say("last helmet held", asked, last("inventory", held));
    say("last sign-off withdrawn", asked, last("fitting", withdrawn));
    say("last re-fit case opened", asked, last("fitting", opened));
    say("last notice raised", asked, last("notify", raised));
  }

  private static void say(String what, Instant from, Instant to) {
    double seconds = Duration.between(from, to).toMillis() / 1000.0;
    System.out.printf("%-28s %8.1f s after the hold was asked for%n", what, seconds);
  }

  /** When the last of them was recorded, once there are as many as helmets. */
  private Instant last(String service, String type) throws Exception {
    await(service, "select count(*) from journal where type = '" + type + "'");
    try (Connection c = database(service).getConnection();
        ResultSet row =
            c.createStatement()
                .executeQuery("select max(recorded_at) from journal where type = '" + type + "'")) {
      row.next();
      return row.getObject(1, OffsetDateTime.class).toInstant();
    }
  }

  private void await(String service, String count) {
    new Counts(database(service)).awaitAtLeast(helmets, count, PATIENCE);
  }

  private void prepare() throws Exception {
    StringBuilder places = new StringBuilder("code,name,kind,altitude_m,time_zone\n");
    places.append("DEPOT,Depot,depot,1500,America/Denver\n");
    for (int i = 0; i < FIELDS; i++) {
      places.append(field(i)).append(",Field ").append(i).append(",field,1500,America/Denver\n");
    }
    post("/inventory/api/import/places?mode=all-or-none", "text/csv", places.toString());
    for (int from = 0; from < helmets; from += CHUNK) {
      post("/sizing/api/import/players?mode=all-or-none", "text/csv", players(from));
      post("/inventory/api/import/helmets?mode=all-or-none", "text/csv", worn(from));
    }
    for (int from = 0; from < free; from += CHUNK) {
      post("/inventory/api/import/helmets?mode=all-or-none", "text/csv", spare(from));
    }
    await("fitting", "select count(*) from player where field is not null");
    await("fitting", "select count(*) from helmet where place <> 'DEPOT'");
    await("notify", "select count(*) from guardianship");
    signOff();
    await("inventory", "select count(*) from helmet where state = 'issued'");
    await("fitting", "select count(*) from helmet where state = 'issued'");
    System.out.println(helmets + " players wear helmets, " + free + " helmets are free");
  }

  private static String field(int i) {
    return "FIELD%02d".formatted(i % FIELDS);
  }

  private String players(int from) {
    StringBuilder csv =
        new StringBuilder(
            "player_number,given_name,family_name,birth_date,sex,team,field,guardian_name,"
                + "guardian_email,guardian_phone,guardian_language\n");
    for (int i = from; i < Math.min(from + CHUNK, helmets); i++) {
      csv.append(
          "BN-%05d,Ada,Bench%d,2015-04-30,f,TEAM-%d,%s,Bea Bench%d,bea.%d@example.org,,en%n"
              .formatted(i, i, i / 20, field(i / 20), i, i));
    }
    return csv.toString();
  }

  /** Another day for each file: the same row in two files is taken for the same helmet. */
  private static LocalDate made(int from) {
    return LocalDate.now().minusMonths(6).plusDays(from / CHUNK);
  }

  private String worn(int from) {
    StringBuilder csv = new StringBuilder("tag,model,size,lot,manufactured_on,place\n");
    for (int i = from; i < Math.min(from + CHUNK, helmets); i++) {
      String size = SIZES.get(i % SIZES.size());
      csv.append(",model-a,%s,WORN-1,%s,%s%n".formatted(size, made(from), field(i / 20)));
    }
    return csv.toString();
  }

  private String spare(int from) {
    StringBuilder csv = new StringBuilder("tag,model,size,lot,manufactured_on,place\n");
    for (int i = from; i < Math.min(from + CHUNK, free); i++) {
      csv.append(
          ",model-a,%s,FREE-1,%s,DEPOT%n".formatted(SIZES.get(i % SIZES.size()), made(from)));
    }
    return csv.toString();
  }

  private void signOff() throws Exception {
    JdbcTransactions transactions = new JdbcTransactions(database("fitting"));
    EventTypes types = EventTypes.of("fitting").with("signed-off", 1, SignedOff.class);
    PostgresJournal journal = new PostgresJournal(transactions, types, Clock.systemUTC(), () -> {});
    List<SignedOff> all = new ArrayList<>();
    try (Connection c = database("fitting").getConnection();
        ResultSet row = c.createStatement().executeQuery(pairs())) {
      while (row.next()) {
        all.add(
            new SignedOff(
                row.getObject("player", UUID.class),
                UuidV7.next(),
                row.getString("tag"),
                row.getString("model"),
                row.getString("size"),
                row.getString("field"),
                "fitter.bench",
                Instant.now()));
      }
    }
    for (int from = 0; from < all.size(); from += 500) {
      List<SignedOff> some = all.subList(from, Math.min(from + 500, all.size()));
      transactions.required(
          c -> {
            journal.appendAll(some.stream().map(HoldBench::append).toList());
            rows(c, some);
            return null;
          });
    }
  }

  private static String pairs() {
    return """
    select p.player, p.field, h.tag, h.model, h.size
      from (select player, field, row_number() over (order by player) as n from player) p
      join (select tag, model, size, row_number() over (order by tag) as n from helmet
             where place <> 'DEPOT') h using (n)
    """;
  }

  private static Append append(SignedOff event) {
    StreamName stream = StreamName.of("signoff", event.player(), event.player());
    return new Append(stream, 0, List.of(event), Cause.command(UuidV7.next()));
  }

  private static void rows(Connection c, List<SignedOff> events) throws SQLException {
    try (PreparedStatement insert =
        c.prepareStatement(
            "insert into sign_off (player, state, session, tag, model, size, fitter, at)"
                + " values (?, 'signed-off', ?, ?, ?, ?, ?, ?)")) {
      for (SignedOff e : events) {
        insert.setObject(1, e.player());
        insert.setObject(2, e.session());
        insert.setString(3, e.tag());
        insert.setString(4, e.model());
        insert.setString(5, e.size());
        insert.setString(6, e.fitter());
        insert.setObject(7, e.at().atOffset(ZoneOffset.UTC));
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  private PGSimpleDataSource database(String service) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl("jdbc:postgresql://127.0.0.1:" + (gateway + 7000) + "/" + service);
    source.setUser("tapeline");
    source.setPassword("tapeline");
    return source;
  }

  private String post(String path, String type, String body)
      throws IOException, InterruptedException {
    String login =
        Base64.getEncoder().encodeToString("manager:larkfield".getBytes(StandardCharsets.UTF_8));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + gateway + path))
            .header("Authorization", "Basic " + login)
            .header("Idempotency-Key", UUID.randomUUID().toString())
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    try (HttpClient http = HttpClient.newHttpClient()) {
      HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() / 100 != 2) {
        throw new IOException(path + ": " + answer.statusCode() + " " + answer.body());
      }
      return answer.body();
    }
  }
}
