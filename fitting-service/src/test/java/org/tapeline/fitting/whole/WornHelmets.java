package org.tapeline.fitting.whole;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.signoff.SignOffEvent.Conditions;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;
import org.tapeline.fitting.signoff.SignedOffVersions;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.EventTypes;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.store.JdbcTransactions;
import org.tapeline.journal.store.PostgresJournal;
import org.tapeline.testkit.BenchStack;
import org.tapeline.testkit.Counts;

/**
 * Players who wear helmets, on a stack without other data. Players and helmets are imported; their
 * sign-offs are written into fitting's journal as sessions would.
 */
final class WornHelmets {
  static final Duration PATIENCE = Duration.ofMinutes(40);
  static final int FIELDS = 14;
  private static final int CHUNK = 2_000;
  private static final List<String> SIZES = List.of("youth-small", "youth-medium", "youth-large");

  private final BenchStack stack;
  private final int helmets;
  private final int free;

  /**
   * @param helmets how many players, each with one
   * @param free how many more are in the depot
   */
  WornHelmets(BenchStack stack, int helmets, int free) {
    this.stack = stack;
    this.helmets = helmets;
    this.free = free;
  }

  void make() throws Exception {
    StringBuilder places = new StringBuilder("code,name,kind,altitude_m,time_zone\n");
    places.append("DEPOT,Depot,depot,1500,America/Denver\n");
    for (int i = 0; i < FIELDS; i++) {
      places.append(field(i)).append(",Field ").append(i).append(",field,1500,America/Denver\n");
    }
    stack.post("/inventory/api/import/places?mode=all-or-none", "text/csv", places.toString());
    for (int from = 0; from < helmets; from += CHUNK) {
      stack.post("/sizing/api/import/players?mode=all-or-none", "text/csv", players(from));
      stack.post("/inventory/api/import/helmets?mode=all-or-none", "text/csv", worn(from));
    }
    for (int from = 0; from < free; from += CHUNK) {
      stack.post("/inventory/api/import/helmets?mode=all-or-none", "text/csv", spare(from));
    }
    await("fitting", "select count(*) from player where field is not null");
    await("fitting", "select count(*) from helmet where place <> 'DEPOT'");
    await("notify", "select count(*) from guardianship");
    signOff();
    await("inventory", "select count(*) from helmet where state = 'issued'");
    await("fitting", "select count(*) from helmet where state = 'issued'");
    System.out.println(helmets + " players wear helmets, " + free + " helmets are free");
  }

  private void await(String service, String count) {
    new Counts(stack.database(service)).awaitAtLeast(helmets, count, PATIENCE);
  }

  static String field(int i) {
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
    JdbcTransactions transactions = new JdbcTransactions(stack.database("fitting"));
    EventTypes types = SignedOffVersions.declareOn(EventTypes.of("fitting"));
    PostgresJournal journal = new PostgresJournal(transactions, types, Clock.systemUTC(), () -> {});
    List<SignedOff> all = new ArrayList<>();
    try (Connection c = stack.database("fitting").getConnection();
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
                Conditions.NOT_NOTED,
                "youth-football",
                2,
                Instant.now()));
      }
    }
    for (int from = 0; from < all.size(); from += 500) {
      List<SignedOff> some = all.subList(from, Math.min(from + 500, all.size()));
      transactions.required(
          c -> {
            journal.appendAll(some.stream().map(WornHelmets::append).toList());
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
}
