package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.hold.HoldEvent.HelmetPutAside;
import org.tapeline.inventory.hold.HoldEvent.HoldLifted;
import org.tapeline.inventory.hold.HoldEvent.HoldPlaced;
import org.tapeline.inventory.hold.HoldLift.Meant;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * Places and lifts holds, each as one command. What it means for each helmet is marked in the same
 * transaction, and brought into the helmets' records by {@link HoldRunner} afterwards.
 */
@ApplicationScoped
public class HoldDesk {
  private final HoldStore store;
  private final HoldHelmets helmets;
  private final OpenHolds open;
  private final HoldRunner runner;
  private final Journal journal;
  private final CommandLog commands;
  private final Transactions transactions;
  private final Clock clock;

  HoldDesk(
      HoldStore store,
      HoldHelmets helmets,
      OpenHolds open,
      HoldRunner runner,
      Journal journal,
      CommandLog commands,
      Transactions transactions,
      Clock clock) {
    this.store = store;
    this.helmets = helmets;
    this.open = open;
    this.runner = runner;
    this.journal = journal;
    this.commands = commands;
    this.transactions = transactions;
    this.clock = clock;
  }

  /** What was placed. */
  public record Placed(UUID hold, int matching, int worn) {}

  /** What was lifted. */
  public record Lifted(UUID hold, int helmets) {}

  /** What was laid aside. */
  public record Aside(UUID hold, String tag) {}

  public Answer place(HoldAsk ask, String by, UUID id) {
    HoldCriteria criteria = ask.criteria();
    return commands.once(
        id, "place-hold", ask, () -> Answer.of(201, place(ask, criteria, by, Cause.command(id))));
  }

  private Placed place(HoldAsk ask, HoldCriteria c, String by, Cause cause) {
    UUID hold = DerivedId.from(cause.id(), "hold");
    StreamName stream = stream(hold);
    Instant now = clock.instant();
    // What the helmets' events follow from is the very event that is written below.
    Cause placing = cause.step("place-hold");
    UUID event = DerivedId.from(placing.id(), placing.step() + "/" + stream.text() + "/0");
    open.letNoneCome();
    store.insert(hold, ask, c, by, now, new Cause(event, cause.correlationId(), "due"));
    int matching = helmets.concern(hold);
    int worn = helmets.worn(hold);
    store.counted(hold, matching, worn);
    HoldPlaced placed =
        new HoldPlaced(
            hold,
            ask.reason(),
            ask.reference(),
            c.model(),
            c.lots().stream().sorted().toList(),
            c.madeFrom(),
            c.madeTo(),
            c.tags().stream().sorted().toList(),
            matching,
            worn,
            by,
            now);
    journal.append(stream, 0, List.of(placed), placing);
    transactions.afterCommit(runner::wake);
    return new Placed(hold, matching, worn);
  }

  public Answer lift(UUID hold, HoldLift asked, String by, UUID id) {
    Meant lift = asked.meant();
    return commands.once(
        id,
        "lift-hold/" + hold,
        asked,
        () -> Answer.of(200, lift(hold, lift, by, Cause.command(id))));
  }

  private Lifted lift(UUID hold, Meant lift, String by, Cause cause) {
    store.lock(hold);
    check(hold, lift);
    StreamName stream = stream(hold);
    Cause lifting = cause.step("lift-hold");
    UUID event = DerivedId.from(lifting.id(), lifting.step() + "/" + stream.text() + "/0");
    Instant now = clock.instant();
    int freed = helmets.free(hold, lift, event, cause.correlationId());
    store.lifted(hold, lift, now);
    HoldLifted lifted =
        new HoldLifted(
            hold,
            lift.scope(),
            List.copyOf(lift.lots()),
            Optional.of(lift.place()).filter(p -> !p.isEmpty()),
            List.copyOf(lift.tags()),
            freed,
            by,
            now);
    journal.append(stream, journal.version(stream), List.of(lifted), lifting);
    transactions.afterCommit(runner::wake);
    return new Lifted(hold, freed);
  }

  /**
   * What a lift would free.
   *
   * @throws Problem when there is nothing of it, or it cannot be lifted now
   */
  public List<String> wouldFree(UUID hold, HoldLift asked) {
    return check(hold, asked.meant());
  }

  private List<String> check(UUID hold, Meant lift) {
    Hold known = known(hold);
    if (!known.open()) {
      throw Problem.conflict("hold-lifted", "This hold was lifted before.");
    }
    if (known.due() > 0) {
      throw Problem.conflict(
          "hold-not-settled",
          "The hold is still being written into the helmets' records. Try again in a minute.");
    }
    List<String> tags = helmets.inScope(hold, lift);
    List<String> others = lift.tags().stream().filter(tag -> !tags.contains(tag)).toList();
    if (!others.isEmpty()) {
      String sentence = "Not under this hold: " + String.join(", ", others) + ".";
      throw Problem.badRequest("tags", sentence, new Problem.FieldError("tags", sentence));
    }
    boolean nothing = tags.isEmpty() && !lift.scope().matches("whole|lots");
    if (nothing) {
      String sentence = "No helmet there is under this hold.";
      throw Problem.badRequest("place", sentence, new Problem.FieldError("place", sentence));
    }
    return tags;
  }

  /** Notes that somebody laid the helmet aside; once more says nothing. */
  public Answer putAside(UUID hold, String tag, String place, String by, UUID id) {
    return commands.once(
        id,
        "put-aside/" + hold,
        tag,
        () -> {
          Instant now = clock.instant();
          if (helmets.putAside(hold, tag, by, now)) {
            StreamName stream = StreamName.of("aside", hold + "-" + tag, tag);
            List<HelmetPutAside> aside = List.of(new HelmetPutAside(hold, tag, place, by, now));
            journal.append(stream, journal.version(stream), aside, Cause.command(id));
          }
          return Answer.of(200, new Aside(hold, tag));
        });
  }

  /** The events of a hold. */
  public List<RecordedEvent> history(UUID hold) {
    return journal.load(stream(hold));
  }

  /**
   * @throws Problem 404 when there is none
   */
  public Hold known(UUID hold) {
    return store.find(hold).orElseThrow(() -> Problem.notFound("There is no such hold."));
  }

  private static StreamName stream(UUID hold) {
    return StreamName.of("hold", hold, hold);
  }
}
