package org.tapeline.fitting.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.PreparedStatement;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Transactions;

/** What was said of single helmets of a hold, in any order; a tag list may have thousands. */
@ApplicationScoped
public class HoldHelmets {
  private static final String LISTED =
      """
      insert into hold_helmet (tag, hold, listed) select distinct t, ?, true from unnest(?) t
        on conflict (tag, hold) do update set listed = true
      """;
  private static final String SETTLED =
      """
      insert into hold_helmet (tag, hold, settled) select distinct t, ?, true from unnest(?) t
        on conflict (tag, hold) do update set settled = true
      """;

  private final Transactions transactions;

  HoldHelmets(Transactions transactions) {
    this.transactions = transactions;
  }

  /** They stand on the hold's list: it concerns them whatever they are. */
  void listed(UUID hold, List<String> tags) {
    note(LISTED, hold, tags);
  }

  /** Nothing of the hold is ahead for them any more: what their own events say counts alone. */
  void settled(UUID hold, List<String> tags) {
    note(SETTLED, hold, tags);
  }

  private void note(String sql, UUID hold, List<String> tags) {
    transactions.required(
        connection -> {
          try (PreparedStatement insert = connection.prepareStatement(sql)) {
            insert.setObject(1, hold);
            insert.setArray(2, connection.createArrayOf("text", tags.toArray()));
            return insert.executeUpdate();
          }
        });
  }
}
