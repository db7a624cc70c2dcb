package org.tapeline.journal;

import java.util.List;

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

  /** All events of a stream in order; empty where there is no such stream. */
  List<RecordedEvent> load(StreamName stream);

  /**
   * Events of all streams in the order of their positions, for rebuilding what is derived from
   * them. Only for a journal at rest or with a margin: a writer may still commit a lower position.
   */
  List<RecordedEvent> loadAfter(long position, int limit);
}
