package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.quarkus.http.Problem;

/** The batches as lists show them. */
@ApplicationScoped
public class BatchStore {
  private static final String COUNTED =
      """
      select b.*, count(l.tag) as helmets, count(l.tag) filter (where l.packed) as packed,
             count(l.tag) filter (where l.outcome is null) as unknown,
             coalesce(sum(l.cost_cents), 0) as cost
        from reconditioning_batch b left join reconditioning_line l on l.batch = b.batch
      """;

  private final Database database;

  BatchStore(Database database) {
    this.database = database;
  }

  /**
   * A batch in a list.
   *
   * @param state draft, sent or closed
   * @param packed ticked off while it is a draft
   * @param unknown of how many nothing is known yet
   */
  public record Summary(
      UUID batch,
      String place,
      String reconditioner,
      String state,
      Optional<LocalDate> sentOn,
      Optional<LocalDate> backBy,
      int helmets,
      int packed,
      int unknown,
      long costCents) {

    /** The state in more words: packed when all is ticked off, short when closed without all. */
    public String says() {
      return switch (state) {
        case "draft" -> helmets > 0 && packed == helmets ? "packed" : "draft";
        case "sent" -> unknown == 0 ? "all back" : unknown < helmets ? "partly back" : "sent";
        default -> unknown > 0 ? "closed, short" : "closed";
      };
    }
  }

  /** A helmet of a batch; the outcome is empty while nothing is known of it. */
  public record Line(
      UUID batch,
      String tag,
      String model,
      String size,
      boolean packed,
      Optional<String> outcome,
      Optional<LocalDate> certifiedUntil,
      Optional<Long> costCents,
      Optional<LocalDate> backOn) {
    public boolean isOut() {
      return outcome.isEmpty();
    }
  }

  /** What is being done first, then the newest. */
  List<Summary> all() {
    return database.list(
        COUNTED + " group by b.batch order by b.state = 'closed', b.made_at desc limit 100",
        BatchStore::summary);
  }

  /**
   * @throws Problem when there is none
   */
  Summary known(UUID batch) {
    return database
        .first(COUNTED + " where b.batch = ? group by b.batch", BatchStore::summary, batch)
        .orElseThrow(() -> Problem.notFound("There is no batch " + batch + "."));
  }

  List<Line> lines(UUID batch) {
    return lines("l.batch = ?", batch);
  }

  /** Helmets that never came back though their batch is closed. */
  List<Line> missing() {
    return lines(
        "l.outcome is null and exists (select 1 from reconditioning_batch b"
            + " where b.batch = l.batch and b.state = ?)",
        "closed");
  }

  private List<Line> lines(String which, Object value) {
    return database.list(
        "select l.*, h.model, h.size from reconditioning_line l join helmet h on h.tag = l.tag"
            + " where "
            + which
            + " order by h.model, h.size, l.tag",
        BatchStore::line,
        value);
  }

  void draft(UUID batch, String place, String reconditioner, Instant at) {
    database.change(
        "insert into reconditioning_batch (batch, place, reconditioner, state, made_at)"
            + " values (?, ?, ?, 'draft', ?)",
        batch,
        place,
        reconditioner,
        at);
  }

  /** Whether it was in no batch. */
  boolean add(UUID batch, String tag) {
    return database.change(
            "insert into reconditioning_line (batch, tag) values (?, ?) on conflict do nothing",
            batch,
            tag)
        == 1;
  }

  /** Whether it is in that batch. */
  boolean pack(UUID batch, String tag, boolean packed) {
    return database.change(
            "update reconditioning_line set packed = ? where batch = ? and tag = ?",
            packed,
            batch,
            tag)
        == 1;
  }

  void remove(UUID batch, String tag) {
    database.change("delete from reconditioning_line where batch = ? and tag = ?", batch, tag);
  }

  void giveUp(UUID batch) {
    database.change("delete from reconditioning_line where batch = ?", batch);
    database.change("delete from reconditioning_batch where batch = ?", batch);
  }

  /** What was not packed stays here. */
  void sent(UUID batch, LocalDate on, LocalDate backBy) {
    database.change("delete from reconditioning_line where batch = ? and not packed", batch);
    database.change(
        "update reconditioning_batch set state = 'sent', sent_on = ?, back_by = ? where batch = ?",
        on,
        backBy,
        batch);
  }

  void back(UUID batch, BatchEvent.Result r, Optional<LocalDate> certifiedUntil, LocalDate on) {
    database.change(
        "update reconditioning_line set outcome = ?, certified_until = ?, cost_cents = ?,"
            + " back_on = ? where batch = ? and tag = ?",
        r.outcome(),
        certifiedUntil.orElse(null),
        r.costCents(),
        on,
        batch,
        r.tag());
  }

  void closed(UUID batch) {
    database.change("update reconditioning_batch set state = 'closed' where batch = ?", batch);
  }

  /**
   * How reconditioners judged so far.
   *
   * @param rejected never to be worn again
   * @param judged rejected or certified again
   */
  public record Judged(int rejected, int judged) {}

  public Judged judged() {
    return database
        .first(
            "select count(*) filter (where outcome = 'rejected') as rejected,"
                + " count(*) filter (where outcome in ('rejected', 'recertified')) as judged"
                + " from reconditioning_line",
            row -> new Judged(row.getInt("rejected"), row.getInt("judged")))
        .orElseThrow();
  }

  private static Summary summary(ResultSet row) throws SQLException {
    return new Summary(
        row.getObject("batch", UUID.class),
        row.getString("place"),
        row.getString("reconditioner"),
        row.getString("state"),
        Optional.ofNullable(row.getObject("sent_on", LocalDate.class)),
        Optional.ofNullable(row.getObject("back_by", LocalDate.class)),
        row.getInt("helmets"),
        row.getInt("packed"),
        row.getInt("unknown"),
        row.getLong("cost"));
  }

  private static Line line(ResultSet row) throws SQLException {
    return new Line(
        row.getObject("batch", UUID.class),
        row.getString("tag"),
        row.getString("model"),
        row.getString("size"),
        row.getBoolean("packed"),
        Optional.ofNullable(row.getString("outcome")),
        Optional.ofNullable(row.getObject("certified_until", LocalDate.class)),
        Optional.ofNullable(row.getObject("cost_cents", Long.class)),
        Optional.ofNullable(row.getObject("back_on", LocalDate.class)));
  }
}
