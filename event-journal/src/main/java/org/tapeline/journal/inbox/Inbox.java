package org.tapeline.journal.inbox;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.tapeline.journal.Cause;
import org.tapeline.journal.OutOfReach;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;
import org.tapeline.journal.Subscription.Mode;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.watch.JournalWatch;

/**
 * Applies received records so that each has its effect exactly once: the stream's position, the
 * effect and the events that it causes are one transaction. A record that cannot be applied is
 * parked, and with it all later ones of its stream; the other streams flow on.
 */
public final class Inbox {
  private static final Logger LOG = System.getLogger(Inbox.class.getName());
  private static final long[] WAITS_MILLIS = {20, 100, 400};

  private final Transactions transactions;
  private final Subscription subscription;
  private final Clock clock;
  private final JournalWatch watch;

  public Inbox(Transactions transactions, Subscription subscription, Clock clock) {
    this(transactions, subscription, clock, JournalWatch.NONE);
  }

  public Inbox(
      Transactions transactions, Subscription subscription, Clock clock, JournalWatch watch) {
    this.transactions = transactions;
    this.subscription = subscription;
    this.clock = clock;
    this.watch = watch;
  }

  /**
   * Applies a batch in one transaction; when that fails, in halves, and at last record by record,
   * so that one bad record costs only itself, and a conflict with another copy of the service not
   * much more.
   *
   * @throws RuntimeException when the database is out of reach: nothing was decided, and the batch
   *     must be given again
   */
  void apply(List<Envelope> batch) {
    if (batch.size() == 1) {
      applyAlone(batch.getFirst());
      return;
    }
    try {
      transactions.required(
          connection -> {
            Set<String> parked = parkedStreams(connection, batch);
            for (Envelope envelope : batch) {
              if (step(connection, envelope, parked.contains(streamOf(envelope)))) {
                parked.add(streamOf(envelope));
              }
              transactions.settle();
            }
            return null;
          });
    } catch (RuntimeException e) {
      if (OutOfReach.is(e)) {
        throw e;
      }
      LOG.log(Level.DEBUG, "A batch failed and is done in halves: {0}", e.toString());
      apply(batch.subList(0, batch.size() / 2));
      apply(batch.subList(batch.size() / 2, batch.size()));
    }
  }

  private static Set<String> parkedStreams(Connection connection, List<Envelope> batch)
      throws SQLException {
    return Parking.among(
        connection, batch.stream().map(Inbox::streamOf).collect(Collectors.toSet()));
  }

  private static String streamOf(Envelope envelope) {
    return envelope.topic() + " " + Storable.text(envelope.headers().get("ce_subject"));
  }

  private void applyAlone(Envelope envelope) {
    RuntimeException last = null;
    for (int tries = 0; tries <= WAITS_MILLIS.length; tries++) {
      try {
        transactions.required(
            connection -> {
              Set<String> parked = parkedStreams(connection, List.of(envelope));
              step(connection, envelope, !parked.isEmpty());
              return null;
            });
        return;
      } catch (RuntimeException e) {
        if (OutOfReach.is(e)) {
          // However often: a good record must not be parked because a server was started again, and
          // the connections that broke then come out of the pool one by one.
          throw e;
        }
        last = e;
        rest(tries);
      }
    }
    parkFailed(envelope, last);
  }

  /** Reached only when the database answers: where it does not, this throws and nothing is lost. */
  private void parkFailed(Envelope envelope, RuntimeException why) {
    ReceivedEvent event = envelope.open();
    watch.step(
        "park",
        Cause.of(event, "park"),
        () -> {
          LOG.log(
              Level.ERROR,
              "Parked {0} {1} of {2}: {3}",
              event.type(),
              event.id(),
              streamOf(envelope),
              why.toString());
          return transactions.required(connection -> parkFailed(connection, envelope, event, why));
        });
  }

  private ReceivedEvent parkFailed(
      Connection connection, Envelope envelope, ReceivedEvent event, RuntimeException why)
      throws SQLException {
    Parking.lock(connection, event.topic(), event.stream());
    int tries = WAITS_MILLIS.length + 1;
    Parking.park(
        connection,
        ParkedRecord.of(envelope, event, "failed", describe(why), tries, clock.instant()));
    return event;
  }

  /** True when the record, or one of its stream before it, is parked now. */
  private boolean step(Connection connection, Envelope envelope, boolean behindParked)
      throws SQLException {
    ReceivedEvent event;
    try {
      event = envelope.open();
    } catch (Envelope.Malformed e) {
      Parking.park(connection, ParkedRecord.malformed(envelope, e.getMessage(), clock.instant()));
      return false;
    }
    if (subscription.mode(event.topic()) == Mode.LATEST) {
      applyLatest(connection, envelope, event);
      return false;
    }
    if (behindParked) {
      parkBehind(connection, envelope, event);
      return true;
    }
    return applyNext(connection, envelope, event);
  }

  private void applyLatest(Connection connection, Envelope envelope, ReceivedEvent event)
      throws SQLException {
    if (!subscription.knows(event.type())) {
      park(connection, envelope, event, "unknown-type", "nobody here knows " + event.type());
    } else if (Positions.advance(connection, event, Mode.LATEST)) {
      if (envelope.tombstone()) {
        watch.applying(event, () -> subscription.handleErased(event));
      } else {
        watch.applying(event, () -> subscription.handle(event));
      }
    }
  }

  /** True when it had to be parked. */
  private boolean applyNext(Connection connection, Envelope envelope, ReceivedEvent event)
      throws SQLException {
    if (!subscription.knows(event.type())) {
      park(connection, envelope, event, "unknown-type", "nobody here knows " + event.type());
      return true;
    }
    if (Positions.advance(connection, event, Mode.EVERY_VERSION)) {
      watch.applying(event, () -> subscription.handle(event));
      return false;
    }
    long applied = Positions.of(connection, event.topic(), event.stream());
    if (event.version() > applied + 1) {
      park(connection, envelope, event, "gap", "version " + (applied + 1) + " has not come");
      return true;
    }
    return false;
  }

  /**
   * The event may be the very one that its parked followers wait for, or what was parked before it
   * may just have been applied: decided under the stream's lock.
   */
  private void parkBehind(Connection connection, Envelope envelope, ReceivedEvent event)
      throws SQLException {
    Parking.lock(connection, event.topic(), event.stream());
    if (event.version() > Positions.of(connection, event.topic(), event.stream())) {
      String detail = "an earlier event of the stream is parked";
      Parking.park(
          connection, ParkedRecord.of(envelope, event, "behind", detail, 1, clock.instant()));
      takeOut(connection, parkedOf(connection, event));
    }
  }

  /** Applies parked events that only waited for those before them, as far as these have come. */
  private void takeOut(Connection connection, List<ParkedRecord> parked) throws SQLException {
    for (ParkedRecord record : parked) {
      long applied = Positions.of(connection, record.envelope().topic(), record.stream());
      if (record.version() > applied + 1 || !record.onlyWaits()) {
        return;
      }
      Parking.remove(connection, record);
      applyNext(connection, record.envelope(), record.envelope().open());
    }
  }

  private List<ParkedRecord> parkedOf(Connection connection, ReceivedEvent event)
      throws SQLException {
    return Parking.of(connection, event.stream()).stream()
        .filter(parked -> parked.envelope().topic().equals(event.topic()))
        .toList();
  }

  /**
   * Tries the parked events of a stream again, in order, up to the first that still fails.
   *
   * @return how many were applied
   */
  int replay(String stream) {
    int done = 0;
    List<ParkedRecord> waiting = transactions.required(c -> Parking.of(c, stream));
    for (ParkedRecord record : waiting) {
      try {
        transactions.required(
            connection -> {
              Parking.lock(connection, record.envelope().topic(), stream);
              Parking.remove(connection, record);
              step(connection, record.envelope(), false);
              return null;
            });
        if (stillParked(record)) {
          return done;
        }
        done++;
      } catch (RuntimeException e) {
        transactions.required(
            connection -> {
              Parking.failedAgain(connection, record, describe(e));
              return null;
            });
        return done;
      }
    }
    return done;
  }

  private boolean stillParked(ParkedRecord record) {
    return transactions.required(c -> Parking.of(c, record.stream())).stream()
        .anyMatch(other -> other.version() == record.version());
  }

  private void park(
      Connection connection, Envelope envelope, ReceivedEvent event, String reason, String detail)
      throws SQLException {
    watch.step(
        "park",
        Cause.of(event, "park"),
        () -> {
          LOG.log(Level.WARNING, "Parked {0} of {1}: {2}", event.type(), event.stream(), detail);
          return event;
        });
    Parking.park(connection, ParkedRecord.of(envelope, event, reason, detail, 1, clock.instant()));
  }

  private static String describe(Throwable why) {
    Throwable root = why;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root.getClass().getSimpleName() + ": " + root.getMessage();
  }

  private static void rest(int tries) {
    if (tries >= WAITS_MILLIS.length) {
      return;
    }
    try {
      Thread.sleep(WAITS_MILLIS[tries]);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
  }
}
