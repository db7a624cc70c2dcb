package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Restock.Kind;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.inventory.restock.RestockEvent.RestockCancelled;
import org.tapeline.inventory.restock.RestockWatch.Waits;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;

/** Makes, merges and drops requests of re-fit cases; always in the caller's transaction. */
@ApplicationScoped
public class RestockDesk {
  private static final String BY_ITSELF = "tapeline";

  private final RestockStore store;
  private final RestockJournal journal;
  private final RestockPolicy policy;
  private final Places places;
  private final Database database;
  private final Clock clock;

  RestockDesk(
      RestockStore store,
      RestockJournal journal,
      RestockPolicy policy,
      Places places,
      Database database,
      Clock clock) {
    this.store = store;
    this.journal = journal;
    this.policy = policy;
    this.places = places;
    this.database = database;
    this.clock = clock;
  }

  /**
   * What is wanted where.
   *
   * @param item a part's code, or {@code helmet:<model>:<size>}
   */
  public record Wanted(
      String place, String item, Optional<String> model, Optional<String> size, Waits cause) {}

  /**
   * The request, which nobody else can change or merge into until the transaction ends. In the
   * order in which {@link #request} locks: else the two would wait for each other.
   */
  Restock held(UUID request) {
    Restock known = store.known(request);
    lock(known.place(), known.item());
    return store.locked(request);
  }

  void lock(String place, String item) {
    database.lock("restock " + place + " " + item);
  }

  /**
   * Asks for one from outside; merged into the open request of that place and item. What is on its
   * way for the case already is not asked for twice.
   */
  public Restock request(Wanted wanted, Cause cause) {
    lock(wanted.place(), wanted.item());
    Optional<Restock> coming = store.comingFor(wanted.cause());
    if (coming.isPresent()) {
      return coming.get();
    }
    Instant expected = expected(wanted.place(), wanted.item());
    UUID refitCase = wanted.cause().refitCase();
    Cause step = cause.step("request-" + refitCase + "-" + wanted.item());
    Optional<Restock> open = store.mergeable(wanted.place(), wanted.item());
    if (open.isPresent()) {
      return merge(open.get(), wanted.cause(), expected, step);
    }
    String name = "restock/" + wanted.place() + "/" + wanted.item() + "/" + refitCase;
    Restock made =
        made(
            wanted, DerivedId.from(cause.id(), name), Optional.empty(), Optional.empty(), expected);
    return open(made, wanted.cause(), step);
  }

  Instant expected(String place, String item) {
    return policy.restocked(item, clock.instant(), places.zone(place));
  }

  private Restock merge(Restock open, Waits waits, Instant expected, Cause cause) {
    if (!store.addCause(open.request(), waits)) {
      return open;
    }
    Instant when = open.expectedAt().isBefore(clock.instant()) ? expected : open.expectedAt();
    return resaid(open, open.forStock(), when, cause);
  }

  /** With what its cases and the shelf need of it now. */
  Restock resaid(Restock open, int forStock, Instant expected, Cause cause) {
    int several = store.countCauses(open.request()) + forStock;
    int quantity = open.tag().isPresent() ? 1 : several;
    Restock now = open.changed(quantity, forStock, State.REQUESTED, expected);
    store.save(now, clock.instant());
    journal.requested(now, cause);
    return now;
  }

  /** A helmet that is to be at another of our places, though no case waits for it. */
  public record Bring(
      String item, String model, String size, String tag, String from, String to, Instant by) {}

  /** Asks to bring a helmet; nothing when it is on its way already. */
  public void bring(Bring bring, Cause cause) {
    if (store.travelling(bring.tag(), bring.to()).isPresent()) {
      return;
    }
    String name = "bring/" + bring.tag();
    Restock made =
        new Restock(
            DerivedId.from(cause.id(), name),
            Kind.TRANSFER,
            bring.to(),
            Optional.of(bring.from()),
            bring.item(),
            Optional.of(bring.model()),
            Optional.of(bring.size()),
            Optional.of(bring.tag()),
            1,
            0,
            State.REQUESTED,
            bring.by());
    store.save(made, clock.instant());
    journal.requested(made, cause.step(name));
  }

  /**
   * Asks to bring a helmet or a part from one of our places to another. A helmet that is on its way
   * there already is not asked for twice.
   */
  public Restock transfer(
      Wanted wanted, String fromPlace, Optional<String> tag, Instant expected, Cause cause) {
    Optional<Restock> coming = tag.flatMap(t -> store.travelling(t, wanted.place()));
    if (coming.isPresent()) {
      store.addCause(coming.get().request(), wanted.cause());
      return coming.get();
    }
    String name = "transfer/" + wanted.cause().refitCase() + "/" + tag.orElse(wanted.item());
    UUID id = DerivedId.from(cause.id(), name);
    Restock made = made(wanted, id, Optional.of(fromPlace), tag, expected);
    return open(made, wanted.cause(), cause.step(name));
  }

  private static Restock made(
      Wanted wanted, UUID id, Optional<String> from, Optional<String> tag, Instant expected) {
    return new Restock(
        id,
        from.isPresent() ? Kind.TRANSFER : Kind.RESTOCK,
        wanted.place(),
        from,
        wanted.item(),
        wanted.model(),
        wanted.size(),
        tag,
        1,
        0,
        State.REQUESTED,
        expected);
  }

  private Restock open(Restock made, Waits waits, Cause cause) {
    store.save(made, clock.instant());
    store.addCause(made.request(), waits);
    journal.requested(made, cause);
    return made;
  }

  /** The case no longer waits for it: what nobody waits for and nobody has picked is dropped. */
  public void forget(Waits waits, String why, Cause cause) {
    for (Restock open : store.requestedFor(waits.refitCase(), waits.needKey())) {
      Cause step = cause.step("forget-" + waits.refitCase() + "-" + waits.needKey());
      store.removeCause(open.request(), waits);
      if (store.countCauses(open.request()) == 0 && open.forStock() == 0) {
        drop(open, why, step);
      } else {
        resaid(open, open.forStock(), open.expectedAt(), step);
      }
    }
  }

  private void drop(Restock open, String why, Cause cause) {
    Instant now = clock.instant();
    store.save(open.changed(open.quantity(), 0, State.CANCELLED, open.expectedAt()), now);
    journal.append(
        open, new RestockCancelled(open.request(), open.place(), why, BY_ITSELF, now), cause);
  }
}
