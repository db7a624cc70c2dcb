package org.tapeline.journal.state;

import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import org.tapeline.journal.CurrentState;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.EventTypeName;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** The newest value of each key in PostgreSQL, from where the relay sends it. */
public final class PostgresCurrentState implements CurrentState {
  // The revision is taken under the row's lock, so that it rises in the order of the commits.
  private static final String SET =
      """
      insert into current_state as s
        (topic, type, record_key, revision, data, event_id, changed_at, unsent)
      values (?, ?, ?, nextval('current_state_revision'), ?::json, ?, ?, true)
      on conflict (topic, type, record_key) do update
        set revision = nextval('current_state_revision'), data = excluded.data,
            event_id = excluded.event_id, changed_at = excluded.changed_at, unsent = true
        where s.data::text is distinct from excluded.data::text
      """;

  private final Transactions transactions;
  private final Clock clock;
  private final Runnable wakeRelay;

  public PostgresCurrentState(Transactions transactions, Clock clock, Runnable wakeRelay) {
    this.transactions = transactions;
    this.clock = clock;
    this.wakeRelay = wakeRelay;
  }

  @Override
  public void put(String topic, String type, String key, Object data) {
    set(topic, type, key, EventJson.MAPPER.valueToTree(data).toString());
  }

  @Override
  public void erase(String topic, String type, String key) {
    set(topic, type, key, null);
  }

  private void set(String topic, String type, String key, String json) {
    EventTypeName.parse(type);
    transactions.required(
        connection -> {
          try (PreparedStatement statement = connection.prepareStatement(SET)) {
            bind(statement, topic, type, key, json);
            if (statement.executeUpdate() == 1) {
              transactions.afterCommit(wakeRelay);
            }
          }
          return null;
        });
  }

  private void bind(PreparedStatement statement, String topic, String type, String key, String json)
      throws SQLException {
    statement.setString(1, topic);
    statement.setString(2, type);
    statement.setString(3, key);
    statement.setString(4, json);
    statement.setObject(5, UuidV7.next());
    statement.setObject(6, clock.instant().atOffset(ZoneOffset.UTC));
  }
}
