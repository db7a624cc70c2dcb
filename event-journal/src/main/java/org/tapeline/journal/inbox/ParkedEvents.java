package org.tapeline.journal.inbox;

import java.time.Instant;
import java.util.List;
import org.tapeline.journal.Transactions;

/** What could not be applied, to be shown and tried again. Contents are left out on purpose. */
public final class ParkedEvents {
  private final Transactions transactions;
  private final Inbox inbox;

  public ParkedEvents(Transactions transactions, Inbox inbox) {
    this.transactions = transactions;
    this.inbox = inbox;
  }

  /**
   * A parked event.
   *
   * @param reason see {@link ParkedRecord}
   * @param detail what went wrong, in the words of whatever failed
   */
  public record Parked(
      String topic,
      String stream,
      long version,
      String type,
      String reason,
      String detail,
      int tries,
      Instant parkedAt) {}

  /** All parked events, oldest first. */
  public List<Parked> all() {
    return transactions.required(Parking::all).stream().map(ParkedEvents::shown).toList();
  }

  /**
   * Tries the parked events of a stream again, in order, up to the first that fails.
   *
   * @return how many were applied
   */
  public int replay(String stream) {
    return inbox.replay(stream);
  }

  private static Parked shown(ParkedRecord record) {
    return new Parked(
        record.envelope().topic(),
        record.stream(),
        record.version(),
        record.envelope().headers().getOrDefault("ce_type", "unknown"),
        record.reason(),
        record.detail(),
        record.tries(),
        record.at());
  }
}
