package org.tapeline.inventory.books;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.Balances;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;

/** Compares the books with what the journal says, account by account and part by part. */
@ApplicationScoped
public class BooksCheck {
  private static final int AT_A_TIME = 2000;

  private final Database database;
  private final Journal journal;

  BooksCheck(Database database, Journal journal) {
    this.database = database;
    this.journal = journal;
  }

  /** A part on an account where the two differ, in pieces over all models. */
  public record Difference(String account, String item, int books, int journal) {}

  /**
   * What the check found.
   *
   * @param unbalanced parts whose pieces do not sum up to 0 over all accounts
   * @param differences where the books are not what the journal says
   */
  public record Found(int lines, List<String> unbalanced, List<Difference> differences) {}

  /** Account and part. */
  private record Line(String account, String item) implements Comparable<Line> {
    @Override
    public int compareTo(Line other) {
      int byAccount = account.compareTo(other.account);
      return byAccount != 0 ? byAccount : item.compareTo(other.item);
    }
  }

  /** For a journal at rest: what is booked meanwhile may be told as a difference. */
  public Found run() {
    Map<Line, Integer> books = new TreeMap<>();
    database.list(
        "select account, item, sum(amount)::int from ledger_entry group by 1, 2",
        row -> books.put(new Line(row.getString(1), row.getString(2)), row.getInt(3)));
    Map<Line, Integer> said = fromJournal();
    List<Difference> differences = new ArrayList<>();
    Map<Line, Integer> all = new TreeMap<>(books);
    said.forEach(all::putIfAbsent);
    for (Line line : all.keySet()) {
      int inBooks = books.getOrDefault(line, 0);
      int inJournal = said.getOrDefault(line, 0);
      if (inBooks != inJournal) {
        differences.add(new Difference(line.account(), line.item(), inBooks, inJournal));
      }
    }
    return new Found(books.size(), unbalanced(), differences);
  }

  private List<String> unbalanced() {
    return database.list(
        "select item from ledger_entry group by item, model having sum(amount) <> 0 order by 1",
        row -> row.getString(1));
  }

  private Map<Line, Integer> fromJournal() {
    Map<Line, Integer> sums = new TreeMap<>();
    for (Map.Entry<Balances.Key, Integer> e : replayed().balances().lines().entrySet()) {
      sums.merge(new Line(e.getKey().account(), e.getKey().item()), e.getValue(), Integer::sum);
    }
    return sums;
  }

  private Replay replayed() {
    Replay replay = new Replay();
    long position = 0;
    List<RecordedEvent> some = journal.loadAfter(position, AT_A_TIME);
    while (!some.isEmpty()) {
      for (RecordedEvent event : some) {
        replay.add(event.data());
      }
      position = some.getLast().position();
      some = journal.loadAfter(position, AT_A_TIME);
    }
    return replay;
  }
}
