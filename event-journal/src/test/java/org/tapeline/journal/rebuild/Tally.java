package org.tapeline.journal.rebuild;

import java.sql.PreparedStatement;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Counted;
import org.tapeline.journal.JournalFixture;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** The read models of these tests: how often each thing was counted, here and by a peer. */
final class Tally {
  static final String TABLES =
      """
      create table tally (thing text primary key, times integer not null, newest integer not null,
                          note text not null default '');
      create table heard (event uuid primary key, thing text not null, number integer not null);
      """;
  private static final String COUNT =
      """
      insert into tally (thing, times, newest) values (?, 1, ?)
      on conflict (thing) do update set times = tally.times + 1, newest = excluded.newest
      """;

  private final Transactions transactions;

  Tally(Transactions transactions) {
    this.transactions = transactions;
  }

  ReadModel tallies() {
    return ReadModel.of("tallies", ReadTable.of("tally").keeping("note"))
        .fromJournal(Counted.class, event -> show((Counted) event.data()));
  }

  ReadModel heard(String topic) {
    return ReadModel.of("heard", ReadTable.of("heard"))
        .fromPeers(
            copies -> copies.events(topic).on(JournalFixture.COUNTED, Counted.class, this::keep));
  }

  void show(Counted counted) {
    transactions.required(
        connection -> {
          try (PreparedStatement count = connection.prepareStatement(COUNT)) {
            count.setString(1, counted.thing());
            count.setInt(2, counted.number());
            return count.executeUpdate();
          }
        });
  }

  void keep(Counted counted, ReceivedEvent event) {
    transactions.required(
        connection -> {
          try (PreparedStatement insert =
              connection.prepareStatement("insert into heard values (?, ?, ?)")) {
            insert.setObject(1, event.id());
            insert.setString(2, counted.thing());
            insert.setInt(3, counted.number());
            return insert.executeUpdate();
          }
        });
  }

  void forget(Counted counted) {
    transactions.required(
        connection -> {
          try (PreparedStatement delete =
              connection.prepareStatement("delete from heard where thing = ?")) {
            delete.setString(1, counted.thing());
            return delete.executeUpdate();
          }
        });
  }

  /** As a service does it: the event and the table in one transaction. */
  RecordedEvent count(JournalFixture on, String thing, long before) {
    UUID id = UuidV7.next();
    return transactions.required(
        connection -> {
          Counted counted = new Counted(thing, (int) before + 1);
          RecordedEvent event =
              on.journal
                  .append(JournalFixture.stream(thing), before, List.of(counted), Cause.command(id))
                  .getFirst();
          show(counted);
          return event;
        });
  }
}
