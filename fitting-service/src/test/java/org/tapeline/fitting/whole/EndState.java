package org.tapeline.fitting.whole;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.StringJoiner;
import java.util.UUID;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.signoff.Sideline;
import org.tapeline.journal.Transactions;

/**
 * What stands at the end of a story, in its own words: ids are replaced by who is who. Left out are
 * moments, and why a sign-off ended and a case was opened: where a fitter fails a helmet while
 * damage on another one is on its way, both are true, and the one heard first is the one that is
 * said. Which slot of a day it is hangs on who came first, too; that there is one, and where, does
 * not.
 */
final class EndState {
  private static final String PLAYER =
      """
      select concat_ws(' ', coalesce(given_name || ' ' || family_name, 'no name'), 'at', field,
                       case when on_roster then 'plays' else 'left' end),
        (select string_agg(model || ' ' || size, ', ' order by model) from advised_size a
          where a.player = p.player),
        (select concat_ws(' ', state, tag) from sign_off s where s.player = p.player),
        (select concat_ws(' ', 'case at', field, team, string_agg(concat_ws(' ', need_key, n.tag,
            case when missing then 'ordered' end, case when arrives_at is null then 'unknown' end),
            ', ' order by need_key),
            (select 'booked at ' || d.field from fit_slot join fit_day d using (fit_day)
              where refit_case = c.refit_case))
          from refit_case c join refit_need n using (refit_case)
          where c.player = p.player and status = 'open' group by refit_case, field, team),
        (select 'owed ' || needs from owed_refit o where o.player = p.player),
        (select string_agg('kept ' || tag, ', ' order by tag) from helmet_reservation r
          where r.player = p.player)
      from player p where player = ?
      """;
  private static final String HELMET =
      "select state, holder::text, place, size from helmet where tag = ?";

  private final Transactions transactions;
  private final Sideline sideline;

  EndState(Transactions transactions, Sideline sideline) {
    this.transactions = transactions;
    this.sideline = sideline;
  }

  String of(GeneratedStory story) {
    StringJoiner all = new StringJoiner("\n");
    transactions.required(
        c -> {
          for (Person p : story.players) {
            all.add(row(c, PLAYER, p.player()) + "| " + wear(p));
          }
          for (String tag : story.helmets) {
            all.add(tag + ": " + row(c, HELMET, tag));
          }
          return null;
        });
    return inItsOwnWords(all.toString(), story);
  }

  private String wear(Person p) {
    PlayerCopy player = PlayerCopy.findById(p.player());
    return sideline.line(player).state().code();
  }

  private static String row(Connection c, String sql, Object key) throws SQLException {
    try (PreparedStatement select = c.prepareStatement(sql)) {
      select.setObject(1, key);
      try (ResultSet row = select.executeQuery()) {
        StringJoiner columns = new StringJoiner(" | ");
        if (!row.next()) {
          return "unknown";
        }
        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
          columns.add(String.valueOf(row.getString(i)));
        }
        return columns.toString();
      }
    }
  }

  private static String inItsOwnWords(String text, GeneratedStory story) {
    String own = text;
    List<String> tags = story.helmets;
    for (int i = 0; i < tags.size(); i++) {
      own = own.replaceAll(tags.get(i) + "\\b", "helmet " + (i + 1));
    }
    for (int i = 0; i < story.players.size(); i++) {
      Person p = story.players.get(i);
      UUID id = p.player();
      own = own.replace(id.toString(), "player " + (i + 1));
      own = own.replaceAll(p.team() + "\\b", "team " + (i + 1));
      own = own.replaceAll(p.tag() + "R\\b", "spare " + (i + 1));
    }
    return own;
  }
}
