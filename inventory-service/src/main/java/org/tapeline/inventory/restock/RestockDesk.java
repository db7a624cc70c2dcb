package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Restock.Kind;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.inventory.restock.RestockEvent.RestockCancelled;
import org.tapeline.inventory.restock.RestockEvent.RestockRequested;
import org.tapeline.inventory.restock.RestockWatch.Waits;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Makes, merges and drops requests; always in the caller's transaction. */
@ApplicationScoped
public class RestockDesk {
  private static final String BY_ITSELF = "tapeline";

  private final RestockStore store;
  private final RestockPolicy policy;
  private final Places places;
  private final Database database;
  private final Journal journal;
  private final Clock clock;

  RestockDesk(
      RestockStore store,
      RestockPolicy policy,
      Places places,
      Database database,
      Journal journal,
      Clock clock) {
    this.store = store;
    this.policy = policy;
    this.places = places;
    this.database = database;
    this.journal = journal;
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

  private void lock(String place, String item) {
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
    Optional<Restock> open = store.mergeable(wanted.place(), wanted.item());
    Instant now = clock.instant();
    Instant expected = policy.restocked(wanted.item(), now, places.zone(wanted.place()));
    Cause step = cause.step("request-" + wanted.cause().refitCase() + "-" + wanted.item());
    if (open.isPresent()) {
      return merge(open.get(), wanted.cause(), expected, step);
    }
    Restock made =
        new Restock(
            DerivedId.from(
                cause.id(),
                "restock/"
                    + wanted.place()
                    + "/"
                    + wanted.item()
                    + "/"
                    + wanted.cause().refitCase()),
            Kind.RESTOCK,
            wanted.place(),
            Optional.empty(),
            wanted.item(),
            wanted.model(),
            wanted.size(),
            Optional.empty(),
            1,
            State.REQUESTED,
            expected);
    return open(made, wanted.cause(), step);
  }

  private Restock merge(Restock open, Waits waits, Instant expected, Cause cause) {
    if (!store.addCause(open.request(), waits)) {
      return open;
    }
    Instant now = clock.instant();
    Instant when = open.expectedAt().isBefore(now) ? expected : open.expectedAt();
    Restock merged = changed(open, store.causes(open.request()).size(), State.REQUESTED, when);
    store.save(merged, now);
    sayRequested(merged, cause);
    return merged;
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
            State.REQUESTED,
            bring.by());
    store.save(made, clock.instant());
    sayRequested(made, cause.step(name));
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
    Restock made =
        new Restock(
            DerivedId.from(cause.id(), name),
            Kind.TRANSFER,
            wanted.place(),
            Optional.of(fromPlace),
            wanted.item(),
            wanted.model(),
            wanted.size(),
            tag,
            1,
            State.REQUESTED,
            expected);
    return open(made, wanted.cause(), cause.step(name));
  }

  private Restock open(Restock made, Waits waits, Cause cause) {
    store.save(made, clock.instant());
    store.addCause(made.request(), waits);
    sayRequested(made, cause);
    return made;
  }

  /** The case no longer waits for it: what nobody waits for and nobody has picked is dropped. */
  public void forget(Waits waits, String why, Cause cause) {
    for (Restock open : store.requestedFor(waits.refitCase(), waits.needKey())) {
      Cause step = cause.step("forget-" + waits.refitCase() + "-" + waits.needKey());
      store.removeCause(open.request(), waits);
      int left = store.causes(open.request()).size();
      Instant now = clock.instant();
      if (left == 0) {
        store.save(changed(open, open.quantity(), State.CANCELLED, open.expectedAt()), now);
        append(open, new RestockCancelled(open.request(), open.place(), why, BY_ITSELF, now), step);
      } else {
        Restock fewer = changed(open, left, State.REQUESTED, open.expectedAt());
        store.save(fewer, now);
        sayRequested(fewer, step);
      }
    }
  }

  private void sayRequested(Restock r, Cause cause) {
    List<UUID> causes =
        store.causes(r.request()).stream().map(Waits::refitCase).distinct().toList();
    append(
        r,
        new RestockRequested(
            r.request(),
            r.kind().code(),
            r.place(),
            r.fromPlace(),
            r.item(),
            r.model(),
            r.size(),
            r.tag(),
            r.quantity(),
            causes,
            r.expectedAt(),
            clock.instant()),
        cause);
  }

  static Restock changed(Restock r, int quantity, State state, Instant expected) {
    return new Restock(
        r.request(),
        r.kind(),
        r.place(),
        r.fromPlace(),
        r.item(),
        r.model(),
        r.size(),
        r.tag(),
        quantity,
        state,
        expected);
  }

  void append(Restock r, RestockEvent event, Cause cause) {
    StreamName stream = StreamName.of("restock", r.request(), r.place());
    long version = journal.version(stream);
    journal.append(stream, version, List.of((Record) event), cause);
  }
}
