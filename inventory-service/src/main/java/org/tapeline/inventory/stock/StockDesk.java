package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.Ledger.Because;
import org.tapeline.inventory.stock.StockEvent.PartMoved;
import org.tapeline.inventory.stock.StockEvent.PartUsed;
import org.tapeline.inventory.stock.StockEvent.StockCounted;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Keeps the books of parts; always in the caller's transaction. */
@ApplicationScoped
public class StockDesk {
  private static final String OPENING = "opening-stock";

  private final Ledger ledger;
  private final Database database;
  private final Journal journal;
  private final CompatibilityTable compatibility;
  private final StockWatch watch;
  private final Clock clock;

  StockDesk(
      Ledger ledger,
      Database database,
      Journal journal,
      CompatibilityTable compatibility,
      StockWatch watch,
      Clock clock) {
    this.ledger = ledger;
    this.database = database;
    this.journal = journal;
    this.compatibility = compatibility;
    this.watch = watch;
    this.clock = clock;
  }

  /** Pieces of a part at a place, for all models together; less than 0 is a fault to look for. */
  public int pieces(String place, String item) {
    return ledger.shelf(place, item).pieces().values().stream().mapToInt(n -> n).sum();
  }

  /** Sets what is there at the start; whether that changed anything. */
  boolean open(String place, String item, String model, int counted, String by, Cause cause) {
    ledger.lock(place, item);
    int variance = counted - ledger.opened(place, item, model, OPENING);
    if (variance == 0) {
      return false;
    }
    Cause step = cause.step("count-" + item + "-" + model);
    Move move = new Move(Move.outside(OPENING), Move.place(place), item, model, variance);
    ledger.book(move, new Because(OPENING, "", by), step, place, clock.instant());
    int now = Math.max(0, ledger.pieces(place, item, model));
    say(counted(place, item, model, now, variance, OPENING, "", by), step);
    return true;
  }

  /**
   * Books what was counted: the difference to the books goes to the account of its reason.
   *
   * @param book what the books said, which the caller has compared under the lock
   * @param reason a code of the policy; empty when the books agree
   */
  void count(
      String place,
      String item,
      String model,
      int counted,
      int book,
      String reason,
      String by,
      Cause cause) {
    Cause step = cause.step("count-" + item + "-" + model);
    int variance = counted - book;
    if (variance != 0) {
      Move move = new Move(Move.outside(reason), Move.place(place), item, model, variance);
      ledger.book(move, new Because("count", reason, by), step, place, clock.instant());
    }
    say(counted(place, item, model, counted, variance, "count", reason, by), step);
  }

  private StockCounted counted(
      String place,
      String item,
      String model,
      int counted,
      int variance,
      String why,
      String reason,
      String by) {
    StockCounted said =
        new StockCounted(
            place, item, text(model), counted, variance, why, text(reason), by, clock.instant());
    ledger.counted(said);
    return said;
  }

  private static Optional<String> text(String text) {
    return Optional.of(text).filter(t -> !t.isEmpty());
  }

  /** A part went into a helmet of that model at a fit. */
  public void use(String place, String item, String model, UUID session, int nth, Cause cause) {
    ledger.lock(place, item);
    String from = taken(place, item, model);
    Cause step = cause.step("use-" + item + "-" + nth);
    Move move = new Move(Move.place(place), Move.outside("used"), item, from, 1);
    ledger.book(move, Because.of("used"), step, place, clock.instant());
    String keptFor = from.isEmpty() ? "any" : from;
    say(new PartUsed(place, item, 1, session, Optional.of(keptFor)), step);
  }

  /** A part was put on a helmet of that model when it was inspected. */
  public void useAtInspection(
      String place, String item, String model, int nth, String by, Cause cause) {
    ledger.lock(place, item);
    Move move =
        new Move(Move.place(place), Move.outside("used"), item, taken(place, item, model), 1);
    move(move, "inspection", by, cause.step("inspection-" + item + "-" + nth));
  }

  /** Tells who must act that the shelf holds more or fewer than before. */
  public void changed(String place, String item, Cause cause) {
    watch.changed(place, item, cause.step("changed-" + place + "-" + item));
  }

  private String taken(String place, String item, String model) {
    return ledger
        .shelf(place, item)
        .forHelmet(model, from -> compatibility.inForce().fits(item, from, model));
  }

  /** Books by hand, and says so in the stream of the place that gave, else that got. */
  UUID move(Move move, String reason, String by, Cause cause) {
    String place = Move.placeOf(move.from()).or(() -> Move.placeOf(move.to())).orElseThrow();
    UUID id = ledger.book(move, new Because("moved", reason, by), cause, place, clock.instant());
    say(
        new PartMoved(
            id,
            place,
            move.item(),
            text(move.model()),
            move.quantity(),
            move.from(),
            move.to(),
            reason,
            by,
            clock.instant()),
        cause);
    return id;
  }

  /** Parts came from outside. */
  public void receive(String place, String item, String model, int quantity, Cause cause) {
    ledger.lock(place, item);
    Move move = new Move(Move.outside("supplier"), Move.place(place), item, model, quantity);
    ledger.book(move, Because.of("restock"), cause.step("receive-" + item), place, clock.instant());
  }

  /** Parts went from one of our places to another. */
  public void transfer(String from, String to, String item, int quantity, Cause cause) {
    ledger.lock(from, item);
    String model = ledger.shelf(from, item).fullest();
    Move move = new Move(Move.place(from), Move.place(to), item, model, quantity);
    ledger.book(move, Because.of("transfer"), cause.step("transfer-" + item), to, clock.instant());
  }

  /** Parts are spoilt. */
  public void writeOff(String place, String item, int quantity, Cause cause) {
    ledger.lock(place, item);
    String model = ledger.shelf(place, item).fullest();
    Move move = new Move(Move.place(place), Move.outside("damaged"), item, model, quantity);
    ledger.book(
        move, Because.of("damaged"), cause.step("write-off-" + item), place, clock.instant());
  }

  private void say(StockEvent event, Cause cause) {
    StreamName stream = StreamName.of("stock", event.place(), event.place());
    database.lock("stream " + stream.text());
    long version = journal.version(stream);
    journal.append(stream, version, List.of((Record) event), cause);
  }
}
