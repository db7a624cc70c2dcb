package org.tapeline.journal;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** The events of one service: appended in the caller's transaction, never altered or removed. */
public interface Journal {

  /**
   * Appends events to a stream, in the transaction of the caller (or one of its own where there is
   * none).
   *
   * @param expectedVersion the version of the last event that the caller has seen; 0 for a stream
   *     that does not exist yet
   * @throws StreamConflict when the stream has moved on since; the transaction is then lost and the
   *     caller decides again from the newer state
   */
  List<RecordedEvent> append(
      StreamName stream, long expectedVersion, List<? extends Record> events, Cause cause);

  /**
   * Appends to many streams at once, as {@link #append} does to one, with a few statements for all
   * of them: either everything is appended or nothing.
   *
   * @return what was appended, in the order in which it was given
   * @throws StreamConflict when one of the streams has moved on since
   * @throws IllegalArgumentException when a stream is named twice
   */
  List<RecordedEvent> appendAll(List<Append> appends);

  /** All events of a stream in order; empty where there is no such stream. */
  List<RecordedEvent> load(StreamName stream);

  /** The same for many streams with one statement; a stream that does not exist is not in it. */
  Map<StreamName, List<RecordedEvent>> loadAll(Collection<StreamName> streams);

  /** The version of a stream's last event, without reading the events; 0 where there is none. */
  long version(StreamName stream);

  /**
   * Events of all streams in the order of their positions, for rebuilding what is derived from
   * them. Only for a journal at rest or with a margin: a writer may still commit a lower position.
   */
  List<RecordedEvent> loadAfter(long position, int limit);
}
