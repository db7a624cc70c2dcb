package org.tapeline.journal.watch;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Transactions;

/** A journal that somebody looks at. */
public record WatchedJournal(Journal journal, Transactions transactions, JournalWatch watch)
    implements Journal {

  @Override
  public List<RecordedEvent> append(
      StreamName stream, long expectedVersion, List<? extends Record> events, Cause cause) {
    return told(journal.append(stream, expectedVersion, events, cause));
  }

  @Override
  public List<RecordedEvent> appendAll(List<Append> appends) {
    return told(journal.appendAll(appends));
  }

  private List<RecordedEvent> told(List<RecordedEvent> events) {
    if (!events.isEmpty()) {
      transactions.afterCommit(watch.appended(events));
    }
    return events;
  }

  @Override
  public List<RecordedEvent> load(StreamName stream) {
    return journal.load(stream);
  }

  @Override
  public Map<StreamName, List<RecordedEvent>> loadAll(Collection<StreamName> streams) {
    return journal.loadAll(streams);
  }

  @Override
  public long version(StreamName stream) {
    return journal.version(stream);
  }

  @Override
  public List<RecordedEvent> loadAfter(long position, int limit) {
    return journal.loadAfter(position, limit);
  }
}
