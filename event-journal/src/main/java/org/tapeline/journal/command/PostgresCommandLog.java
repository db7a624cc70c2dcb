package org.tapeline.journal.command;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.CommandReused;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.StreamConflict;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.store.Sha256;

/** Commands with their answers in PostgreSQL, noted in the transaction of what they did. */
public final class PostgresCommandLog implements CommandLog {
  private static final int TRIES = 4;
  private static final Duration PAUSE = Duration.ofMillis(25);
  // What PostgreSQL calls serialization_failure and deadlock_detected: it undid the one of two
  // transactions, and asks for it to be begun again.
  private static final Pattern UNDONE = Pattern.compile("40001|40P01");

  private final Transactions transactions;
  private final Clock clock;

  public PostgresCommandLog(Transactions transactions, Clock clock) {
    this.transactions = transactions;
    this.clock = clock;
  }

  @Override
  public Answer once(UUID commandId, String command, Object body, Supplier<Answer> work) {
    byte[] bodyHash = hash(command, body);
    // Inside somebody's transaction a conflict has spoilt it: only its owner can begin again.
    int tries = transactions.active() ? 1 : TRIES;
    for (int i = 1; ; i++) {
      try {
        return transactions.required(c -> doOnce(c, commandId, command, bodyHash, work));
      } catch (StreamConflict e) {
        if (i >= tries) {
          throw e;
        }
      } catch (RuntimeException e) {
        if (i >= tries || !undoneForAnother(e)) {
          throw e;
        }
        letTheOtherPass(i);
      }
    }
  }

  /** The cause may be wrapped: by us, by Hibernate, or by the transaction manager on commit. */
  private static boolean undoneForAnother(RuntimeException e) {
    for (Throwable t = e; t != null; t = t.getCause()) {
      if (t instanceof SQLException sql
          && UNDONE.matcher(String.valueOf(sql.getSQLState())).matches()) {
        return true;
      }
    }
    return false;
  }

  /** Begun at once, it would often take what the other waits for, and both be stuck as before. */
  private static void letTheOtherPass(int tries) {
    try {
      Thread.sleep(PAUSE.multipliedBy(tries));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }

  private Answer doOnce(
      Connection connection, UUID id, String command, byte[] bodyHash, Supplier<Answer> work)
      throws SQLException {
    if (!claim(connection, id, command, bodyHash)) {
      return earlierAnswer(connection, id, bodyHash);
    }
    Answer answer = work.get();
    try (PreparedStatement update =
        connection.prepareStatement(
            "update command_log set status = ?, answer = ? where command_id = ?")) {
      update.setInt(1, answer.status());
      update.setString(2, answer.json());
      update.setObject(3, id);
      update.executeUpdate();
    }
    return answer;
  }

  /** Waits for a twin that is under way: its commit or roll-back decides who does the work. */
  private boolean claim(Connection connection, UUID id, String command, byte[] bodyHash)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into command_log (command_id, command, body_hash, received_at)"
                + " values (?, ?, ?, ?) on conflict do nothing")) {
      insert.setObject(1, id);
      insert.setString(2, command);
      insert.setBytes(3, bodyHash);
      insert.setObject(4, clock.instant().atOffset(ZoneOffset.UTC));
      return insert.executeUpdate() == 1;
    }
  }

  private static Answer earlierAnswer(Connection connection, UUID id, byte[] bodyHash)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "select body_hash, status, answer from command_log where command_id = ?")) {
      select.setObject(1, id);
      try (ResultSet row = select.executeQuery()) {
        if (!row.next() || !Arrays.equals(row.getBytes(1), bodyHash)) {
          throw new CommandReused(id);
        }
        return new Answer(row.getInt(2), row.getString(3));
      }
    }
  }

  private static byte[] hash(String command, Object body) {
    String json = EventJson.MAPPER.valueToTree(body).toString();
    return new Sha256()
        .add(command.getBytes(StandardCharsets.UTF_8))
        .add(json.getBytes(StandardCharsets.UTF_8))
        .digest();
  }
}
