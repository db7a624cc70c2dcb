package org.tapeline.inventory.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;

/** One re-fit case as inventory knows it: what it needs, what is and was kept for it. */
@ApplicationScoped
public class CaseFacts {
  private final Database database;

  CaseFacts(Database database) {
    this.database = database;
  }

  /** The case itself. */
  public record Facts(
      UUID refitCase, UUID player, String field, String urgency, Instant openedAt, boolean open) {
    public boolean urgent() {
      return urgency.equals("do-not-wear");
    }
  }

  /** A need: waiting, reserved or done. */
  public record NeedLine(String needKey, String status) {}

  /**
   * A reservation, live or over.
   *
   * @param what a helmet's tag or a part's code
   * @param why it was chosen; empty for one from before this was kept
   */
  public record Kept(
      String what,
      boolean helmet,
      String fromPlace,
      Instant readyAt,
      Instant expiresAt,
      String status,
      String why) {
    public boolean live() {
      return status.equals("live");
    }
  }

  public Optional<Facts> find(UUID refitCase) {
    return database.first(
        "select * from refit_case where refit_case = ?", CaseFacts::read, refitCase);
  }

  /** The cases of a player, the open ones first, then the newest. */
  public List<Facts> ofPlayer(UUID player) {
    return database.list(
        "select * from refit_case where player = ? order by open desc, opened_at desc limit 20",
        CaseFacts::read,
        player);
  }

  public List<NeedLine> needs(UUID refitCase) {
    return database.list(
        "select need_key, status from case_need where refit_case = ? order by need_key",
        row -> new NeedLine(row.getString(1), row.getString(2)),
        refitCase);
  }

  public List<Kept> kept(UUID refitCase) {
    return database.list(
        "select * from reservation where refit_case = ?"
            + " order by status = 'live' desc, ready_at desc, id desc",
        row ->
            new Kept(
                row.getString("tag") == null ? row.getString("item") : row.getString("tag"),
                row.getString("tag") != null,
                row.getString("from_place"),
                Database.instant(row, "ready_at"),
                Database.instant(row, "expires_at"),
                row.getString("status"),
                row.getString("why")),
        refitCase);
  }

  private static Facts read(ResultSet row) throws SQLException {
    return new Facts(
        row.getObject("refit_case", UUID.class),
        row.getObject("player", UUID.class),
        row.getString("field"),
        row.getString("urgency"),
        Database.instant(row, "opened_at"),
        row.getBoolean("open"));
  }
}
