package org.tapeline.journal;

/** Somebody else appended to the stream since it was read. */
public final class StreamConflict extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public StreamConflict(StreamName stream, long expectedVersion, Throwable cause) {
    super("Stream " + stream + " has moved on from version " + expectedVersion, cause);
  }
}
