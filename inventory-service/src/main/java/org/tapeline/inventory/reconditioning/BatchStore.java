package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
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

  /** What is being done first, then the newest. */
  List<BatchSummary> all() {
    return database.list(
        COUNTED + " group by b.batch order by b.state = 'closed', b.made_at desc limit 100",
        BatchSummary::read);
  }

  /**
   * @throws Problem when there is none
   */
  BatchSummary known(UUID batch) {
    return database
        .first(COUNTED + " where b.batch = ? group by b.batch", BatchSummary::read, batch)
        .orElseThrow(() -> Problem.notFound("There is no batch " + batch + "."));
  }

  List<BatchLine> lines(UUID batch) {
    return lines("l.batch = ?", batch);
  }

  /** Helmets that never came back though their batch is closed. */
  List<BatchLine> missing() {
    return lines(
        "l.outcome is null and exists (select 1 from reconditioning_batch b"
            + " where b.batch = l.batch and b.state = ?)",
        "closed");
  }

  private List<BatchLine> lines(String which, Object value) {
    return database.list(
        "select l.*, h.model, h.size from reconditioning_line l join helmet h on h.tag = l.tag"
            + " where "
            + which
            + " order by h.model, h.size, l.tag",
        BatchLine::read,
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
}
